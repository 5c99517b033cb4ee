import type { Card, Plan, PlanStrip } from '../card/index.ts';
import { insideRing, type Point } from '../geometry/index.ts';
import { pieceAt } from '../parts/index.ts';
import type { Traced } from '../trace/index.ts';
import { toSegment } from './distance.ts';
import { samples } from './joins.ts';

const stepMm = 0.4;
/** Less of a strip on copper counts as not laid yet. */
const laidShare = 0.3;

/** A planned strip laid over what was built: the piece under each of its samples. */
export interface LaidStrip {
  strip: PlanStrip;
  places: Point[];
  /** 0 where no copper lies. */
  pieces: number[];
  /** 1 where nothing else is planned or laid over it: no patch, no strip of another net. */
  clear: Uint8Array;
  laid: boolean;
}

/** Each planned strip, sampled along its path against the built copper. */
export function laidStrips(traced: Traced, { plan, patches }: Card): LaidStrip[] {
  if (!plan) return [];
  return sampled(plan).map(({ strip, places, alone }) => {
    const pieces = places.map((p, k) => pieceAcross(traced, places, k, p, strip.width_mm));
    const clear = alone.map((each, k) =>
      each && !patches.some(({ outline }) => insideRing(places[k], outline)) ? 1 : 0,
    );
    const count = clear.reduce((sum, each) => sum + each, 0);
    const on = pieces.filter((piece, k) => piece > 0 && clear[k]).length;
    return { strip, places, pieces, clear, laid: count > 0 && on / count >= laidShare };
  });
}

interface Sampled {
  strip: PlanStrip;
  places: Point[];
  /** 1 where no strip of another net crosses. */
  alone: Uint8Array;
}

/** Samples hang on the plan alone, which a tap on a lamp leaves as it is: kept for as long as that plan is. */
const samplesOfPlan = new WeakMap<Plan, Sampled[]>();

function sampled(plan: Plan): Sampled[] {
  const known = samplesOfPlan.get(plan);
  if (known) return known;
  const made = plan.strips.map((strip) => {
    const places = samples(strip.path, stepMm);
    const others = plan.strips.filter((other) => other.net !== strip.net && boxesMeet(strip, other));
    const alone = Uint8Array.from(places, (p) => (others.some((other) => overlaps(p, strip, other)) ? 0 : 1));
    return { strip, places, alone };
  });
  samplesOfPlan.set(plan, made);
  return made;
}

function boxesMeet(a: PlanStrip, b: PlanStrip): boolean {
  const reach = (a.width_mm + b.width_mm) / 2 + 0.5;
  return [0, 1].every((axis) => {
    const [p, q] = [a.path.map((each) => each[axis]), b.path.map((each) => each[axis])];
    return Math.min(...p) <= Math.max(...q) + reach && Math.min(...q) <= Math.max(...p) + reach;
  });
}

function overlaps(p: Point, strip: PlanStrip, { path, width_mm }: PlanStrip): boolean {
  const reach = (strip.width_mm + width_mm) / 2 + 0.5;
  return path.some((q, k) => k > 0 && toSegment(p, path[k - 1], q) < reach);
}

/** The piece at a place of a planned strip, looked for across it, so that a strip laid a little beside still counts. */
function pieceAcross(traced: Traced, places: Point[], k: number, p: Point, widthMm: number): number {
  const here = pieceAt(traced, p);
  if (here) return here;
  const [a, b] = [places[Math.max(0, k - 1)], places[Math.min(places.length - 1, k + 1)]];
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  const [nx, ny] = [(a[1] - b[1]) / length, (b[0] - a[0]) / length];
  for (const share of [0.2, -0.2, 0.38, -0.38]) {
    const off = share * widthMm;
    const piece = pieceAt(traced, [p[0] + off * nx, p[1] + off * ny]);
    if (piece) return piece;
  }
  return 0;
}

/** A stretch of a planned strip that no copper covers, between stretches that it does. */
export interface PlannedOpen {
  at: Point;
  mm: number;
  a: { piece: number; at: Point };
  b: { piece: number; at: Point };
}

/** Copper of a strip in a run shorter than this, mm, may be another's that it only touches. */
const leastRunMm = 3;

/**
 * Where a planned strip goes straight over from one piece of copper to another that all but touches it: at an opening cut
 * aslant some copper lies across each of its samples, so that none of them is open.
 */
export function plannedPartings(laid: readonly LaidStrip[], { clearances }: Traced): PlannedOpen[] {
  return laid
    .filter((each) => each.laid)
    .flatMap(({ strip, pieces, places, clear }) =>
      partings(pieces, clear).flatMap((k): PlannedOpen[] => {
        const near = (p: Point) => Math.hypot(p[0] - places[k][0], p[1] - places[k][1]) < strip.width_mm;
        const ends = [pieces[k - 1], pieces[k]];
        const parted = clearances.find(
          ({ a, b, atA, atB }) => ends.includes(a) && ends.includes(b) && near(atA) && near(atB),
        );
        if (!parted) return [];
        const [a, b] = [k - 1, k].map((n) => ({ piece: pieces[n], at: places[n] }));
        return [{ at: places[k], mm: parted.mm, a, b }];
      }),
    );
}

/** Samples before which the piece changes, with enough of one piece to either side. */
function partings(pieces: readonly number[], clear: Uint8Array): number[] {
  const run = Math.ceil(leastRunMm / stepMm);
  return [...pieces.keys()].filter((k) => {
    if (k < run || k + run > pieces.length || pieces[k] === pieces[k - 1]) return false;
    const lasts = (n: number, as: number): boolean => pieces[n] === pieces[as] && clear[n] === 1;
    return Array.from({ length: run }, (_, n) => lasts(k - 1 - n, k - 1) && lasts(k + n, k)).every(Boolean);
  });
}

/** Openings in the planned strips that are laid. */
export function plannedOpens(laid: readonly LaidStrip[]): PlannedOpen[] {
  return laid
    .filter((each) => each.laid)
    .flatMap(({ pieces, places }) => {
      const opens: PlannedOpen[] = [];
      let last = -1;
      pieces.forEach((piece, k) => {
        if (!piece) return;
        if (last >= 0 && k - last > 1) {
          opens.push({
            at: places[(k + last) >> 1],
            mm: (k - last - 1) * stepMm,
            a: { piece: pieces[last], at: places[last] },
            b: { piece, at: places[k] },
          });
        }
        last = k;
      });
      return opens;
    });
}

/** Places that stand for a strip are so far apart, mm. */
const apartMm = 8;

/**
 * Places well on a laid strip's own copper that stand for its planned net: on each run of one piece its middle and others
 * along it, so that a part between two gaps is known for what it is too.
 */
export function standIns({ pieces, places, clear }: LaidStrip): { piece: number; at: Point }[] {
  const found: { piece: number; at: Point }[] = [];
  let from = 0;
  for (let k = 0; k <= places.length; k++) {
    if (k < places.length && clear[k] && clear[from] && pieces[k] === pieces[from]) continue;
    const mm = (k - from) * stepMm;
    if (pieces[from] && clear[from] && mm >= leastRunMm) {
      const count = Math.max(1, Math.round(mm / apartMm));
      for (let n = 0; n < count; n++) {
        const at = places[from + Math.floor(((n + 0.5) / count) * (k - from))];
        found.push({ piece: pieces[from], at });
      }
    }
    from = k;
  }
  return found;
}
