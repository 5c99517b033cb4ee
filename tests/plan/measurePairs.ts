/**
 * Measures compareMasks on a folder of picture pairs: ID_temp.jpg as designed, ID_test.jpg as built, black conductor,
 * ID.txt with x1 y1 x2 y2 kind a line (1 open, 2 short, 3 nibble, 4 spur, 5 stray, 6 pin-hole).
 * Run: npx tsx tests/plan/measurePairs.ts DIR [-v]
 * @source the rule of scoring: Tang et al. 2019, arXiv 1902.06197 (same kind and IoU over 0.33)
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Bitmap, PixelBox } from '../../src/plan/compare/bitmap.ts';
import type { MaskFault } from '../../src/plan/compare/compareMasks.ts';
import { compareMasks } from '../../src/plan/compare/compareMasks.ts';
import { components } from '../../src/copper/index.ts';

const kinds = ['open', 'short', 'nibble', 'spur', 'stray', 'pin-hole'] as const;
/** The set's boxes are the fault and about this much round it. */
const BOX_MARGIN_PX = 10;
const NEAR_PX = 15;

interface Label extends PixelBox {
  kind: string;
}

async function load(file: string): Promise<Bitmap> {
  const { data, info } = await sharp(file).greyscale().raw().toBuffer({ resolveWithObject: true });
  return { width: info.width, height: info.height, on: Uint8Array.from(data, (v) => (v < 128 ? 1 : 0)) };
}

function labelsOf(file: string): Label[] {
  const lines = readFileSync(file, 'utf8').trim().split('\n');
  return lines.map((line) => {
    const [x0, y0, x1, y1, kind] = line.split(/[\s,]+/).map(Number);
    return { x0, y0, x1, y1, kind: kinds[kind - 1] };
  });
}

function iou(a: PixelBox, b: PixelBox): number {
  const w = Math.min(a.x1, b.x1) - Math.max(a.x0, b.x0);
  const h = Math.min(a.y1, b.y1) - Math.max(a.y0, b.y0);
  if (w <= 0 || h <= 0) return 0;
  const area = (c: PixelBox) => (c.x1 - c.x0) * (c.y1 - c.y0);
  return (w * h) / (area(a) + area(b) - w * h);
}

function padded({ box }: MaskFault): PixelBox {
  const m = BOX_MARGIN_PX;
  return { x0: box.x0 - m, y0: box.y0 - m, x1: box.x1 + m, y1: box.y1 + m };
}

function reaches(label: Label, fault: MaskFault): boolean {
  const inner = BOX_MARGIN_PX;
  const dx = Math.max(label.x0 + inner - fault.at.x, fault.at.x - (label.x1 - inner), 0);
  const dy = Math.max(label.y0 + inner - fault.at.y, fault.at.y - (label.y1 - inner), 0);
  return Math.hypot(dx, dy) <= NEAR_PX;
}

/** Does the label change the joining of the copper in its own box? The two raw pictures alone decide, no method of ours. */
function changesNet(label: Label, built: Bitmap, plan: Bitmap, shift: { dx: number; dy: number }): boolean {
  const w = label.x1 - label.x0;
  const h = label.y1 - label.y0;
  const cut = (from: Bitmap, dx: number, dy: number) => {
    const out = new Uint8Array(w * h);
    for (let y = 0; y < h; y++) {
      for (let x = 0; x < w; x++) {
        const X = Math.min(Math.max(label.x0 + x + dx, 0), from.width - 1);
        const Y = Math.min(Math.max(label.y0 + y + dy, 0), from.height - 1);
        out[y * w + x] = from.on[Y * from.width + X];
      }
    }
    return components(out, w, h, 8).labels;
  };
  const now = cut(built, 0, 0);
  const planned = cut(plan, Math.round(shift.dx), Math.round(shift.dy));
  const [whole, part] = label.kind === 'open' ? [planned, now] : [now, planned];
  const shared = new Map<number, Map<number, number>>();
  for (let k = 0; k < w * h; k++) {
    if (!whole[k] || !part[k]) continue;
    const inner = shared.get(whole[k]) ?? new Map<number, number>();
    shared.set(whole[k], inner.set(part[k], (inner.get(part[k]) ?? 0) + 1));
  }
  return [...shared.values()].some((inner) => [...inner.values()].filter((n) => n >= 12).length >= 2);
}

const folder = process.argv[2];
const verbose = process.argv.includes('-v');
if (!folder) throw new Error('Give the folder of the pairs: npx tsx tests/plan/measurePairs.ts DIR');
const ids = readdirSync(folder)
  .filter((f) => /\d\.txt$/.test(f))
  .map((f) => f.slice(0, -4));
const score = new Map<string, { hit: number; extra: number; lost: number }>(
  kinds.map((k) => [k, { hit: 0, extra: 0, lost: 0 }]),
);
const net = new Map<string, { real: number; found: number; said: number; right: number }>(
  ['open', 'short'].map((k) => [k, { real: 0, found: 0, said: 0, right: 0 }]),
);
const times: number[] = [];

for (const id of ids) {
  const built = await load(join(folder, `${id}_test.jpg`));
  const plan = await load(join(folder, `${id}_temp.jpg`));
  const labels = labelsOf(join(folder, `${id}.txt`));
  const before = process.cpuUsage();
  const { faults, shift } = compareMasks(built, plan);
  const { user, system } = process.cpuUsage(before);
  times.push((user + system) / 1000);
  const open = new Set(labels);
  for (const fault of faults) {
    if (fault.kind === 'missing') continue;
    const best = [...open]
      .filter((l) => l.kind === fault.kind)
      .sort((a, b) => iou(b, padded(fault)) - iou(a, padded(fault)))[0];
    const right = best && iou(best, padded(fault)) > 0.33;
    if (right) open.delete(best);
    score.get(fault.kind)![right ? 'hit' : 'extra']++;
    if (!right && verbose)
      console.log(id, 'extra', fault.kind, JSON.stringify(fault.box), 'area', fault.areaPx);
  }
  for (const label of open) {
    score.get(label.kind)!.lost++;
    if (verbose) console.log(id, 'lost', label.kind, label.x0, label.y0, label.x1, label.y1);
  }
  for (const [kind, count] of net) {
    const own = labels.filter((l) => l.kind === kind);
    const said = faults.filter((f) => f.kind === kind);
    const real = own.filter((l) => changesNet(l, built, plan, shift));
    count.real += real.length;
    count.found += real.filter((l) => said.some((f) => reaches(l, f))).length;
    count.said += said.length;
    count.right += said.filter((f) => own.some((l) => reaches(l, f))).length;
  }
}

const rows = [...score].map(([kind, { hit, extra, lost }]) => ({
  kind,
  hit,
  extra,
  lost,
  F: +((2 * hit) / (2 * hit + extra + lost)).toFixed(4),
}));
console.table(rows);
const sum = (pick: (r: { hit: number; extra: number; lost: number }) => number) =>
  rows.reduce((n, r) => n + pick(r), 0);
const [hit, extra, lost] = [sum((r) => r.hit), sum((r) => r.extra), sum((r) => r.lost)];
console.log(`all six kinds: F ${((2 * hit) / (2 * hit + extra + lost)).toFixed(4)} over ${ids.length} pairs`);
for (const [kind, n] of net) {
  console.log(
    `${kind}: ${n.found} of ${n.real} net-changing labels found within ${NEAR_PX} px; ${n.right} of ${n.said} said are right`,
  );
}
times.sort((a, b) => a - b);
console.log(
  `ms of a processor a pair: median ${times[times.length >> 1].toFixed(0)}, 95 % ${times[Math.floor(times.length * 0.95)].toFixed(0)}`,
);
