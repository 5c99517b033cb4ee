import type { Bitmap, PixelBox } from './bitmap.ts';
import { boxesMeet } from './bitmap.ts';
import type { Difference } from './differences.ts';
import { differences } from './differences.ts';
import { faultPoint } from './faultPoint.ts';
import { components } from '../../copper/index.ts';
import { explainedByShift } from './localSlack.ts';
import type { Registered } from './register.ts';
import { register } from './register.ts';
import type { MaskFaultKind, RingVerdict } from './ringTopology.ts';
import { ringVerdict } from './ringTopology.ts';

/** One place where the built conductor is not the planned one. Pixels of the built picture. */
export interface MaskFault {
  kind: MaskFaultKind;
  at: { x: number; y: number };
  /** The difference itself. */
  box: PixelBox;
  areaPx: number;
  /** Open or short: the nets of the whole picture differ by it, not only the copper near by. */
  changesNet: boolean;
}

export interface ComparedMasks {
  faults: MaskFault[];
  /** Plan pixel = built pixel + shift, before the smooth bend. */
  shift: { dx: number; dy: number };
  /** How much wider the built conductor is throughout, px a side. */
  swellPx: number;
  /** Planned parts of the conductor and built ones, specks left out. */
  parts: { planned: number; built: number };
}

export interface CompareOptions {
  /** Edges may lie this far from the plan, px. */
  tolerancePx?: number;
  /** The pictures may lie this far apart, px. */
  reachPx?: number;
}

/** Nearer than this to the end of either picture a difference cannot be judged. */
const RIM_PX = 6;
const SPECK_PX = 15;
const EXPLAINED = 0.8;

/**
 * Topology of a built conductor against its plan, without training: the plan is laid onto the built picture, what is
 * missing or extra beyond the tolerance is named by the ring round it, and what is thinner counts only where it cuts
 * or joins.
 */
export function compareMasks(built: Bitmap, plan: Bitmap, options: CompareOptions = {}): ComparedMasks {
  const px = options.tolerancePx ?? 2.5;
  const reach = options.reachPx ?? Math.max(48, Math.round(0.05 * Math.max(built.width, built.height)));
  const pair = register(built, plan, reach);
  const tolerance = { px, mergePx: 6 };
  const nets = {
    planned: components(pair.plan, pair.width, pair.height, 8),
    built: components(pair.built, pair.width, pair.height, 8),
  };
  const faults: MaskFault[] = [];
  for (const sign of ['missing', 'extra'] as const) {
    for (const difference of differences(pair, sign, tolerance)) {
      const verdict = judge(pair, difference);
      if (!verdict) continue;
      const side = sign === 'missing' ? nets.built.labels : nets.planned.labels;
      faults.push({
        kind: verdict.kind,
        at: faultPoint(difference.pixels, pair.width, verdict.sides),
        box: difference.box,
        areaPx: difference.pixels.length,
        changesNet: verdict.kind === 'missing' || sidesDiffer(verdict, side),
      });
    }
  }
  return {
    faults: onePerPlace(faults),
    shift: pair.shift,
    swellPx: pair.swellPx,
    parts: {
      planned: realParts(nets.planned.labels, nets.planned.count),
      built: realParts(nets.built.labels, nets.built.count),
    },
  };
}

/** The kind of a difference, or undefined where it is noise. */
function judge(pair: Registered, difference: Difference): RingVerdict | undefined {
  if (liesOnRim(pair, difference.pixels)) return undefined;
  const verdict = ringVerdict(pair, difference);
  if (difference.thin && verdict.kind !== 'open' && verdict.kind !== 'short') return undefined;
  if (verdict.kind === 'missing' && difference.pixels.length < SPECK_PX) return undefined;
  if (explainedByShift(pair, difference) > EXPLAINED) return undefined;
  return verdict;
}

function liesOnRim({ width, height, planDistance }: Registered, pixels: number[]): boolean {
  const unseen = (i: number) => Number.isNaN(planDistance[i]);
  return pixels.every((i) => {
    const x = i % width;
    const y = (i - x) / width;
    if (x < RIM_PX || y < RIM_PX || x >= width - RIM_PX || y >= height - RIM_PX) return true;
    return (
      unseen(i - RIM_PX) || unseen(i + RIM_PX) || unseen(i - RIM_PX * width) || unseen(i + RIM_PX * width)
    );
  });
}

/** True where the two sides of an open or a short are different nets of the whole picture. */
function sidesDiffer({ sides }: RingVerdict, labels: Int32Array): boolean {
  if (!sides) return false;
  const first = new Set(sides[0].map((i) => labels[i]));
  return sides[1].every((i) => !first.has(labels[i]));
}

/** The same cut seen by two tiles of a long sliver is one fault. */
function onePerPlace(faults: MaskFault[]): MaskFault[] {
  const kept: MaskFault[] = [];
  for (const fault of [...faults].sort((a, b) => b.areaPx - a.areaPx)) {
    if (!kept.some((k) => k.kind === fault.kind && boxesMeet(k.box, fault.box, 1))) kept.push(fault);
  }
  return kept;
}

function realParts(labels: Int32Array, count: number): number {
  const areas = new Int32Array(count + 1);
  for (let k = 0; k < labels.length; k++) areas[labels[k]]++;
  return areas.subarray(1).filter((area) => area >= SPECK_PX).length;
}
