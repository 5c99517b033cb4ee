import type { Card } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import { ranked } from '../net/index.ts';
import type { Finding } from '../net/index.ts';
import type { PlanComparison } from '../plan/index.ts';

/** Two findings of a kind nearer than this are one, mm. */
const sameMm = 4;
/** What the copper that is not laid yet leaves behind at its place. */
const leftBehind = new Set<Finding['kind']>([
  'gap',
  'lamp-off-strip',
  'lamp-on-one-strip',
  'unfed-lamp',
  'missed-contact',
  'loose-end',
]);

/** A stray piece of tape that does one of these is told by what it does. */
const byStray = new Set<Finding['kind']>(['bridge', 'shorted-cell', 'tight', 'lamp-on-one-strip']);

/**
 * One list from what the nets say and what the plan says. A strip that is still to lay speaks for the gaps and bare
 * lamps along it; where both saw the same fault, the surer one stays.
 */
export function mergeFindings(built: Finding[], compared: PlanComparison | undefined, card: Card): Finding[] {
  if (!compared) return built;
  const missing = compared.strips.filter((s) => s.standing === 'to-lay').map((s) => s.id);
  const paths = (card.plan?.strips ?? []).filter((s) => missing.includes(s.id)).map((s) => s.path);
  const explained = (f: Finding) =>
    leftBehind.has(f.kind) && paths.some((path) => distanceToPath(f.at, path) <= sameMm);
  const told = compared.findings.filter((f) => f.kind !== 'extra-strip' || !built.some((b) => causes(f, b)));
  const merged: Finding[] = [];
  for (const finding of [...built.filter((f) => !explained(f)), ...told.map((f) => settled(f, card))]) {
    const twin = merged.findIndex((m) => m.kind === finding.kind && isSame(m, finding));
    if (twin < 0) merged.push(finding);
    else if (finding.certainty > merged[twin].certainty) {
      const { lamps, nets, checked } = merged[twin];
      merged[twin] = { ...finding, lamps: lamps.length > 0 ? lamps : finding.lamps, nets, checked };
    }
  }
  return ranked(merged);
}

/** Whether a stray piece of tape is what another finding tells. */
function causes(stray: Finding, { kind, at }: Finding): boolean {
  const reach = sameMm + (stray.sizeMm ?? 0) / 2;
  return byStray.has(kind) && Math.hypot(stray.at[0] - at[0], stray.at[1] - at[1]) <= reach;
}

function isSame(a: Finding, b: Finding): boolean {
  return Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]) <= sameMm;
}

/** Marks what the maker has checked by hand. */
function settled(finding: Finding, card: Card): Finding {
  const by = card.checked.find(
    ({ kind, at }) => kind === finding.kind && Math.hypot(at[0] - finding.at[0], at[1] - finding.at[1]) < 3,
  );
  return by ? { ...finding, checked: { note: by.note } } : finding;
}

function distanceToPath(p: Point, path: readonly Point[]): number {
  let least = Infinity;
  for (let i = 0; i + 1 < path.length; i++) {
    const [a, b] = [path[i], path[i + 1]];
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const along = ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy || 1);
    const t = Math.min(1, Math.max(0, along));
    least = Math.min(least, Math.hypot(a[0] + t * dx - p[0], a[1] + t * dy - p[1]));
  }
  return least;
}
