import type { FindingKind } from '../../src/card/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import type { TrueFault } from './entry.ts';

/** What is scored of a finding. */
export interface Said {
  kind: FindingKind;
  at: Point;
  certainty: number;
  holds: boolean;
  /** What the certainty was made of. */
  evidence?: { by: string; value: number };
}

export interface KindScore {
  kind: FindingKind;
  found: number;
  missed: number;
  /** Said where nothing true explains it. */
  falsely: number;
}

export interface FindingScore {
  kinds: KindScore[];
  /** Recall by size: each true fault that has one. */
  sizes: { kind: FindingKind; sizeMm: number; found: boolean }[];
  /** Each scored finding with whether it was right. */
  judged: (Said & { right: boolean })[];
  missed: TrueFault[];
}

/** Kinds that the exam's truth can judge. */
export const judgedKinds: FindingKind[] = [
  'shorted-cell',
  'gap',
  'bridge',
  'tight',
  'narrow-neck',
  'reversed-lamp',
  'lamp-off-strip',
  'missing-strip',
  'shifted-strip',
  'extra-strip',
  'seam',
];

export const toleranceMm = 3;

/**
 * Scores findings at 3 mm. A finding of another kind at a true fault (the gap that a missing strip leaves) is
 * neither right nor false.
 */
export function scoreFindings(said: Said[], faults: TrueFault[], excused: TrueFault[]): FindingScore {
  const open = [...faults];
  const kinds = new Map<FindingKind, KindScore>();
  const kindScore = (kind: FindingKind) => {
    const known = kinds.get(kind) ?? { kind, found: 0, missed: 0, falsely: 0 };
    kinds.set(kind, known);
    return known;
  };
  const judged: FindingScore['judged'] = [];
  const sizes: FindingScore['sizes'] = [];
  for (const s of [...said].sort((a, b) => b.certainty - a.certainty)) {
    if (!judgedKinds.includes(s.kind)) continue;
    const match = open.findIndex((f) => f.kind === s.kind && distance(f.path, s.at) <= toleranceMm);
    if (match >= 0) {
      const [fault] = open.splice(match, 1);
      kindScore(s.kind).found++;
      if (fault.sizeMm !== undefined) sizes.push({ kind: s.kind, sizeMm: fault.sizeMm, found: true });
      judged.push({ ...s, right: true });
      continue;
    }
    const explained = [...faults, ...excused].some((f) => distance(f.path, s.at) <= toleranceMm);
    if (explained || (s.kind === 'shorted-cell' && excused.some(({ kind }) => kind === s.kind))) continue;
    kindScore(s.kind).falsely++;
    judged.push({ ...s, right: false });
  }
  for (const fault of open) {
    kindScore(fault.kind).missed++;
    if (fault.sizeMm !== undefined) sizes.push({ kind: fault.kind, sizeMm: fault.sizeMm, found: false });
  }
  return { kinds: [...kinds.values()], sizes, judged, missed: open };
}

/** Least distance of a place from a path, mm. */
export function distance(path: Point[], p: Point): number {
  if (path.length === 1) return Math.hypot(path[0][0] - p[0], path[0][1] - p[1]);
  let least = Infinity;
  for (let i = 0; i + 1 < path.length; i++) {
    const [a, b] = [path[i], path[i + 1]];
    const dx = b[0] - a[0];
    const dy = b[1] - a[1];
    const t = Math.min(1, Math.max(0, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy || 1)));
    least = Math.min(least, Math.hypot(a[0] + t * dx - p[0], a[1] + t * dy - p[1]));
  }
  return least;
}
