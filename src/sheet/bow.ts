import type { Homography, Point, Quad } from '../geometry/index.ts';
import { applyHomography, homographyFromQuad, invertHomography } from './homography.ts';
import { fitSideCurve } from './sideCurve.ts';
import type { SideCurve } from './sideCurve.ts';

/**
 * How the four sides of a sheet that is not flat bow, in the frame that its corners span: mm that a side strays
 * inward-positive along y (top, bottom) or x (left, right) at share t of its length, t (1 - t) (a + b (2 t - 1)).
 */
export interface Bow {
  top: Bend;
  right: Bend;
  bottom: Bend;
  left: Bend;
}

export type Bend = readonly [a: number, b: number];

/** A side that strays less than this is straight, mm: grain, blur and a lens leave as much. */
const leastMm = 0.35;
/** And it must stray by so many times what the edge scatters about its curve. */
const aboveScatter = 2.5;

/** Swing to and fro that a crease may leave on a straight side, and the most that a side may stray, mm. */
const mostSwing = 5.2;
const mostMm = 4;

type Size = { width: number; height: number };

/**
 * The bow of a sheet's sides, and its corners where the bowed sides meet.
 * @param cornersPx as found by straight sides; straight-line px (the lens taken out)
 * @param sides edge points of the sides 0-1, 1-2, 2-3, 3-0, straight-line px
 * @param keepCorners where the maker laid them: then only the sides between them bend
 * @returns undefined where every side is straight as far as can be told
 */
export function bowOf(
  cornersPx: Quad,
  sides: readonly (readonly Point[])[],
  base: Size,
  keepCorners = false,
): { cornersPx: Quad; bow: Bow } | undefined {
  let corners = cornersPx;
  let curves = curvesIn(corners, sides, base);
  if (!curves || !curves.some(isBowed)) return undefined;
  for (let round = 0; round < 3 && !keepCorners; round++) {
    const toPx = homographyFromQuad(corners, base);
    corners = cornersOf(curves, base).map((p) => applyHomography(toPx, p)) as unknown as Quad;
    curves = curvesIn(corners, sides, base);
    if (!curves) return undefined;
  }
  if (curves.some(isWild)) return undefined;
  const [top, right, bottom, left] = curves.map(({ a, b }): Bend => [a, b]);
  return { cornersPx: corners, bow: { top, right, bottom, left } };
}

/**
 * Where a place of the flat base lies in the frame that the bowed sheet's corners span: the Coons patch of its four
 * sides. Without bow it is the place itself, so that the whole map is the plain homography.
 * @source S. A. Coons, Surfaces for computer-aided design of space forms, MIT MAC-TR-41, 1967
 */
export function bent({ top, right, bottom, left }: Bow, { width, height }: Size, [x, y]: Point): Point {
  const u = clamp(x / width);
  const v = clamp(y / height);
  return [
    x + (1 - u) * bendAt(left, v) + u * bendAt(right, v),
    y + (1 - v) * bendAt(top, u) + v * bendAt(bottom, u),
  ];
}

/** The bow of the same sheet when its corners begin `turns` further on, clockwise, as `turnCorners` has them. */
export function turnBow(bow: Bow, turns: number): Bow {
  const inward = inwardBends(bow);
  const [a, b, c, d] = [0, 1, 2, 3].map((side) => inward[(side + turns) % 4]);
  return { top: a, right: negated(b), bottom: negated(reversed(c)), left: reversed(d) };
}

/** Each side as it strays inwards, along its own clockwise way: then all four are alike. Sides 0-1, 1-2, 2-3, 3-0. */
export function inwardBends({ top, right, bottom, left }: Bow): Bend[] {
  return [top, negated(right), reversed(negated(bottom)), reversed(left)];
}

const negated = ([a, b]: Bend): Bend => [-a, -b];
const reversed = ([a, b]: Bend): Bend => [a, -b];

/** The most that any side strays, mm. */
export function mostBow(bow: Bow): number {
  return Math.max(...[bow.top, bow.right, bow.bottom, bow.left].map(mostOf));
}

export function bendAt([a, b]: Bend, t: number): number {
  return t * (1 - t) * (a + b * (2 * t - 1));
}

function mostOf(bend: Bend): number {
  return Math.max(...Array.from({ length: 21 }, (_, k) => Math.abs(bendAt(bend, k / 20))));
}

function isBowed({ a, b, scatterMm }: SideCurve): boolean {
  const most = mostOf([a, b]);
  return most > leastMm && most > aboveScatter * scatterMm;
}

/** Paper bends evenly; a side that swings to and fro has followed a flap, a finger or a strip instead. */
function isWild({ a, b }: SideCurve): boolean {
  return Math.abs(b) > mostSwing + Math.abs(a) / 2 || mostOf([a, b]) > mostMm;
}

/** Each side as a curve over its own length, in mm of the frame of the given corners. */
function curvesIn(corners: Quad, sides: readonly (readonly Point[])[], base: Size): SideCurve[] | undefined {
  const toMm: Homography = invertHomography(homographyFromQuad(corners, base));
  const { width: w, height: h } = base;
  const curves = sides.map((side, i) => {
    const mm = side.map((p) => applyHomography(toMm, p));
    if (i === 0) return fitSideCurve(mm.map(([x, y]) => [x / w, y]));
    if (i === 1) return fitSideCurve(mm.map(([x, y]) => [y / h, x - w]));
    if (i === 2) return fitSideCurve(mm.map(([x, y]) => [x / w, y - h]));
    return fitSideCurve(mm.map(([x, y]) => [y / h, x]));
  });
  return curves.every((curve) => curve !== undefined) ? curves : undefined;
}

/** Where the curves of neighbouring sides meet, mm, in the order of the corners. */
function cornersOf([top, right, bottom, left]: SideCurve[], { width: w, height: h }: Size): Point[] {
  const meet = (across: SideCurve, y0: number, along: SideCurve, x0: number): Point => {
    let [x, y] = [x0, y0];
    for (let n = 0; n < 6; n++) {
      y = y0 + heightAt(across, x / w);
      x = x0 + heightAt(along, y / h);
    }
    return [x, y];
  };
  return [meet(top, 0, left, 0), meet(top, 0, right, w), meet(bottom, h, right, w), meet(bottom, h, left, 0)];
}

function heightAt({ at0, at1, a, b }: SideCurve, t: number): number {
  return at0 + (at1 - at0) * t + bendAt([a, b], t);
}

const clamp = (v: number) => Math.min(1, Math.max(0, v));
