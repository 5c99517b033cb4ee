import type { Card } from '../../card/index.ts';
import type { Traced } from '../../trace/index.ts';
import { middleBy } from './middleBy.ts';
import type { Weighed } from './middleBy.ts';

/** mm of strip that must be seen at least, and how far from the strip's ends a width counts, in widths. */
const leastLength = 60;
const offEnds = 0.7;
/** A width belongs to a stated one that it comes so near, as a share. */
const near = 0.09;
/** Scales tried, each this share above the one before, from 1 over `mostScale` to it. */
const step = 0.02;
const mostScale = 1.8;
/** So much of the plan's strip must be found again in its widths at the scale told, and so much more than at any scale about 1. */
const leastShared = 0.6;
const clearlyMore = 0.2;
/** Scales about 1: the plan's own. */
const own = 0.12;

/** A length that the card states, as it was seen. mm */
export interface Measured {
  seenMm: number;
  statedMm: number;
}

/**
 * The tape's width as it is seen, where the card's plan states it. Tape comes off its roll in one width or two: where the base is
 * taken for a larger or a smaller figure, every strip is too narrow or too wide by the same share.
 * @returns the commonest width; undefined where too little strip is seen, or at no scale in the plan's widths
 */
export function tapeWidth({ plan, flaps }: Card, traced: Traced): Measured | undefined {
  const planned = (plan?.strips ?? []).filter(({ on }) => !flaps.some(({ id }) => id === on));
  const stated = sharesOf(planned.map(({ path, width_mm }) => ({ value: width_mm, weight: lengthOf(path) })));
  const seen = widthsSeen(traced);
  if (stated.length === 0 || sum(seen.map(({ weight }) => weight)) < leastLength) return undefined;
  const scales = scalesTried().map((scale) => ({ scale, shared: sharedAt(scale, stated, seen) }));
  const best = scales.reduce((a, b) => (b.shared > a.shared ? b : a));
  const usual = scales.filter(({ scale }) => Math.abs(Math.log(scale)) <= Math.log(1 + own));
  const asPlanned = usual.reduce((a, b) => (b.shared > a.shared ? b : a));
  const told = best.shared > asPlanned.shared + clearlyMore ? best : asPlanned;
  if (told.shared < leastShared) return undefined;
  const scale = middleBy(seen.flatMap((w) => nearest(w, told.scale, stated)))?.middle ?? told.scale;
  const { value: statedMm } = stated.reduce((a, b) => (b.weight > a.weight ? b : a));
  return { seenMm: scale * statedMm, statedMm };
}

function scalesTried(): number[] {
  const steps = Math.round(Math.log(mostScale) / Math.log(1 + step));
  return Array.from({ length: 2 * steps + 1 }, (_, k) => (1 + step) ** (k - steps));
}

/** How much of the plan's length is seen in its own widths, were they all so many times as large: 0..1. */
function sharedAt(scale: number, stated: Weighed[], seen: Weighed[]): number {
  const all = sum(seen.map(({ weight }) => weight));
  const found = new Map<number, number>();
  for (const { value, weight } of seen) {
    const to = nearestOf(value / scale, stated);
    if (Math.abs(value / scale / to - 1) < near) found.set(to, (found.get(to) ?? 0) + weight / all);
  }
  return sum(stated.map(({ value, weight }) => Math.min(weight, found.get(value) ?? 0)));
}

/** The scale by one width alone, by the stated width that it belongs to. */
function nearest({ value, weight }: Weighed, scale: number, stated: Weighed[]): Weighed[] {
  const to = nearestOf(value / scale, stated);
  return Math.abs(value / scale / to - 1) < near ? [{ value: value / to, weight }] : [];
}

const nearestOf = (value: number, stated: Weighed[]) =>
  stated.reduce((a, b) => (Math.abs(b.value - value) < Math.abs(a.value - value) ? b : a)).value;

/** Each value once, by its share of all the weight. */
function sharesOf(values: Weighed[]): Weighed[] {
  const all = sum(values.map(({ weight }) => weight));
  const by = new Map<number, number>();
  for (const { value, weight } of values) by.set(value, (by.get(value) ?? 0) + weight / all);
  return [...by].map(([value, weight]) => ({ value, weight }));
}

/** The full widths along the centre-lines, each by the length that it stands for, their ends and junctions left out. */
function widthsSeen({ pieces }: Traced): Weighed[] {
  return pieces.flatMap(({ lines }) =>
    lines.flatMap(({ path, widths, lengthMm }) => {
      let at = 0;
      return path.flatMap(([x, y], i) => {
        const length = i === 0 ? 0 : Math.hypot(x - path[i - 1][0], y - path[i - 1][1]);
        at += length;
        const inside = Math.min(at, lengthMm - at) > offEnds * widths[i];
        return inside && length > 0 ? [{ value: widths[i], weight: length }] : [];
      });
    }),
  );
}

function lengthOf(path: readonly (readonly [number, number])[]): number {
  return sum(path.slice(1).map(([x, y], i) => Math.hypot(x - path[i][0], y - path[i][1])));
}

const sum = (values: number[]) => values.reduce((s, v) => s + v, 0);
