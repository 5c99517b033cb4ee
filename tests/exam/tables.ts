import { judgedKinds } from './findingScore.ts';
import type { Row } from './examine.ts';

const number = (v: number | undefined, places = 2) => (v === undefined ? '-' : v.toFixed(places));
const pad = (s: string, n: number) => s.padEnd(n);

export function median(values: number[]): number | undefined {
  const sorted = values.filter((v) => Number.isFinite(v)).sort((a, b) => a - b);
  if (sorted.length === 0) return undefined;
  const mid = sorted.length >> 1;
  return sorted.length % 2 ? sorted[mid] : (sorted[mid - 1] + sorted[mid]) / 2;
}

/** One line a photograph. */
export function perPhoto(rows: Row[]): string {
  const head = 'photograph              corner mm (cert.)  turn  IoU  strict  F.3   pieces  verdict';
  const lines = rows.map((r) => {
    if (r.error) return `${pad(r.name, 24)}${r.error.split('\n')[0]}`;
    const o = r.outline;
    const pieces = `${r.mask?.pieces.found}/${r.mask?.pieces.truly}`;
    return (
      pad(r.name, 24) +
      pad(`${number(o?.mm)} (${number(o?.certainty)})`, 19) +
      pad(String(o?.turned ?? '-'), 6) +
      `${number(r.mask?.iou, 3)} ${number(r.mask?.iouStrict, 3)} ${number(r.mask?.boundaryF, 3)}  ` +
      `${pad(pieces, 7)} ${r.verdict}`
    );
  });
  return [head, ...lines].join('\n');
}

/** Certainty from which on a finding is said as one, not as a place to look at. */
const saidFrom = 0.5;

/** Recall and precision per kind: of all that is named, and of what is not only named as a place to look at. */
export function perKind(rows: Row[]): string {
  const lines = judgedKinds.map((kind) => {
    const scores = rows.flatMap((r) => r.findings?.kinds.filter((k) => k.kind === kind) ?? []);
    const sum = (of: (s: (typeof scores)[number]) => number) => scores.reduce((n, s) => n + of(s), 0);
    const found = sum((s) => s.found);
    const missed = sum((s) => s.missed);
    const falsely = sum((s) => s.falsely);
    if (found + missed + falsely === 0) return '';
    const recall = found + missed > 0 ? found / (found + missed) : undefined;
    const share = (right: number, wrong: number) => (right + wrong > 0 ? right / (right + wrong) : undefined);
    const said = rows
      .flatMap((r) => r.findings?.judged ?? [])
      .filter((each) => each.kind === kind && each.certainty >= saidFrom);
    const right = said.filter((each) => each.right).length;
    const wrong = said.length - right;
    return (
      `${pad(kind, 18)}recall ${number(recall)} (${found}/${found + missed})  ` +
      `precision ${number(share(found, falsely))} (${falsely} false), ` +
      `at ${saidFrom} and up ${number(share(right, wrong))} (${wrong} false)`
    );
  });
  return lines.filter(Boolean).join('\n');
}

/** Recall by size of the fault. */
export function perSize(rows: Row[]): string {
  const edges = [0, 0.4, 0.6, 0.9, 1.3, 2, Infinity];
  const all = rows.flatMap((r) => r.findings?.sizes ?? []);
  const lines: string[] = [];
  for (const kind of ['gap', 'bridge', 'tight'] as const) {
    for (let i = 0; i + 1 < edges.length; i++) {
      const bin = all.filter((s) => s.kind === kind && s.sizeMm >= edges[i] && s.sizeMm < edges[i + 1]);
      if (bin.length === 0) continue;
      const found = bin.filter((s) => s.found).length;
      lines.push(`${pad(kind, 8)}${edges[i]}-${edges[i + 1]} mm  ${found}/${bin.length}`);
    }
  }
  return lines.join('\n');
}

/** How often a finding said at a certainty was right. */
export function reliability(rows: Row[]): string {
  const judged = rows.flatMap((r) => r.findings?.judged ?? []);
  const edges = [0, 0.3, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1.0001];
  const lines: string[] = [];
  for (let i = 0; i + 1 < edges.length; i++) {
    const bin = judged.filter((j) => j.certainty >= edges[i] && j.certainty < edges[i + 1]);
    if (bin.length === 0) continue;
    const said = bin.reduce((n, j) => n + j.certainty, 0) / bin.length;
    const right = bin.filter((j) => j.right).length / bin.length;
    lines.push(
      `certainty ${number(edges[i])}-${number(Math.min(1, edges[i + 1]))}  said ${number(said)}  right ${number(right)}  (${bin.length})`,
    );
  }
  return lines.join('\n');
}

/** Mask and findings per paper, table, light, tilt. */
export function perCondition(rows: Row[]): string {
  const groups = new Map<string, Row[]>();
  for (const r of rows) {
    for (const [k, v] of Object.entries(r.conditions)) {
      const key = `${k} ${v}`;
      groups.set(key, [...(groups.get(key) ?? []), r]);
    }
  }
  const lines = [...groups.entries()].sort().map(([key, of]) => {
    const ious = of.flatMap((r) => r.mask?.iou ?? []);
    const kinds = of.flatMap((r) => r.findings?.kinds.filter((k) => k.kind !== 'seam') ?? []);
    const found = kinds.reduce((n, k) => n + k.found, 0);
    const all = kinds.reduce((n, k) => n + k.found + k.missed, 0);
    const falsely = kinds.reduce((n, k) => n + k.falsely, 0);
    return `${pad(key, 22)}n ${pad(String(of.length), 4)}IoU ${number(median(ious), 3)}  faults ${found}/${all}  false ${falsely}`;
  });
  return lines.join('\n');
}

/** Masks under this IoU are no reading of the photograph. */
const badMask = 0.6;

/** Whether the check knows when it cannot read a photograph: no bad mask may pass in silence. */
export function readability(rows: Row[]): string {
  const seen = rows.flatMap(({ mask, readable }) =>
    mask && readable !== undefined ? [{ ...mask, readable }] : [],
  );
  const count = (bad: boolean, told: boolean) =>
    seen.filter(({ iou, readable }) => iou < badMask === bad && readable < 0.5 === told).length;
  return `said unreadable: ${count(true, true)} of ${count(true, true) + count(true, false)} bad masks (IoU < ${badMask}), ${count(false, true)} of ${count(false, true) + count(false, false)} good ones`;
}

/** Which further shots were left out, and how far those in use had to be moved; empty where there was none. */
export function furtherShots(rows: Row[]): string {
  const shots = rows.flatMap((r) => (r.shots ?? []).map((shot) => ({ photograph: r.name, ...shot })));
  if (shots.length === 0) return '';
  const out = shots.filter(({ used }) => !used);
  const moved = median(shots.filter(({ used }) => used).map(({ movedMm }) => movedMm));
  const why = out
    .map((s) => `${s.photograph} (${s.why === 'outline' ? s.why : `misfit ${number(s.misfitMm)} mm`})`)
    .join(', ');
  return (
    `further shots in use ${shots.length - out.length}/${shots.length}, moved by median ${number(moved)} mm` +
    (why && `; left out: ${why}`)
  );
}

/** The headline figures. */
export function headline(rows: Row[]): string {
  const ious = rows.flatMap((r) => r.mask?.iou ?? []);
  const corners = rows.flatMap((r) => r.outline?.mm ?? []);
  const exact = (of: 'pieces' | 'open') =>
    rows.filter((r) => r.mask && r.mask[of].found === r.mask[of].truly).length;
  const wrong = rows.filter((r) => (r.outline?.mm ?? 0) > 1 && (r.outline?.certainty ?? 0) >= 0.5).length;
  const seconds = rows.flatMap((r) =>
    r.timingsMs ? Object.values(r.timingsMs).reduce((a, b) => a + b, 0) / 1000 : [],
  );
  return [
    `photographs ${rows.length}, could not be checked ${rows.filter((r) => r.error).length}`,
    `corner error median ${number(median(corners))} mm; within 1 mm ${corners.filter((c) => c <= 1).length}/${corners.length}; confidently wrong ${wrong}`,
    `mask IoU median ${number(median(ious), 3)}, worst ${number(ious.length ? Math.min(...ious) : undefined, 3)}; boundary F median ${number(median(rows.flatMap((r) => r.mask?.boundaryF ?? [])), 3)}`,
    `pieces exactly right ${exact('pieces')}/${rows.length}, of what nothing covers ${exact('open')}/${rows.length}; time a photograph median ${number(median(seconds))} s`,
  ].join('\n');
}

export function report(rows: Row[], mode: string): string {
  return [
    `== ${mode}`,
    headline(rows),
    readability(rows),
    ...[furtherShots(rows)].filter(Boolean),
    '',
    perPhoto(rows),
    '',
    perKind(rows),
    '',
    perSize(rows),
    '',
    reliability(rows),
    '',
    perCondition(rows),
    '',
  ].join('\n');
}
