import { cellKinds } from '../../card/schema.ts';
import type { CellKind } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { cellDiametersMm } from '../../sheet/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { fitCircle } from './fitCircle.ts';
import type { Circle } from './fitCircle.ts';
import { circleSeeds } from './circleSeeds.ts';
import { meanAlong, rimPoints, rimRays } from './rimPoints.ts';
import type { SuggestedCell } from './types.ts';

/** The rim lies within this of the fitted circle, mm. */
const toleranceMm = 0.35;
/** An edge this near a circle tells it from another round the same middle, mm. */
const onRimMm = 0.2;
/** Share of the circle on which a rim is seen: under the first there is none to speak of, from the second it is sure. */
const arc = { none: 0.3, sure: 0.7 };
/** A cell wider or narrower than every kind by more than this share is none. */
const mostOff = 0.1;
/** Circles looked at closely. */
const mostSeeds = 4;
/** Another circle can be the rim where it is this share as full as the fullest. */
const nearlyAsFull = 0.75;
/** A disc differs from what lies round it by so many levels; a circle drawn in pencil does not. */
const leastStep = 14;
/** What the trained map adds to a circle that it does not know of: it misses one cell in two. */
const unknownToMap = 0.8;

/**
 * The coin cell on a squared sheet, by the circle of its rim.
 * @param map chance of each pixel to be cell, 0..255, where the trained net gave one
 */
export function findCell(sheet: SquaredSheet, map?: Uint8Array): SuggestedCell | undefined {
  const found = circleSeeds(sheet, distinctRadii, mostSeeds).flatMap((seed) => {
    const rim = rimAt(sheet, seed);
    if (!rim) return [];
    const known = map ? unknownToMap + (1 - unknownToMap) * chanceAt(map, sheet, rim.at) : unknownToMap;
    return [{ ...rim, certainty: rim.certainty * known }];
  });
  return found.sort((a, b) => b.certainty - a.certainty)[0];
}

function rimAt(sheet: SquaredSheet, seed: Circle): SuggestedCell | undefined {
  const circle = fitted(sheet, seed, { from: 0.7, to: 1.35 });
  if (!circle) return undefined;
  const seen = shareSeen(sheet, circle, { most: 1, within: toleranceMm });
  const share = Math.min(seen, discShare(sheet, circle));
  const certainty = Math.min(1, Math.max(0, (share - arc.none) / (arc.sure - arc.none)));
  if (certainty === 0) return undefined;
  const rims = concentric(sheet, circle);
  const rim = rims[0] ?? circle;
  const kind = nearestKind(2 * rim.radius);
  const diameters = [...rims, rim].map(({ radius }) => 2 * radius);
  const rangeMm = [Math.min(...diameters), Math.max(...diameters)] as const;
  return kind && { at: rim.at, diameterMm: 2 * rim.radius, rangeMm, kind, certainty };
}

/**
 * The circles round about one place that are nearly as full as the fullest, which comes first: a bevel or the border
 * of a shadow can be as strong an edge as the rim itself, and which is the rim no edge tells.
 */
function concentric(sheet: SquaredSheet, seed: Circle): Circle[] {
  const tries = [0.93, 0.97, 1, 1.03, 1.07].flatMap((times) => {
    const circle = fitted(sheet, { at: seed.at, radius: seed.radius * times }, { most: 3 });
    return circle ? [{ circle, share: shareSeen(sheet, circle, { most: 3, within: onRimMm }) }] : [];
  });
  const fullest = Math.max(...tries.map(({ share }) => share));
  return tries
    .filter(({ share }) => share > nearlyAsFull * fullest)
    .sort((x, y) => y.share - x.share)
    .map(({ circle }) => circle);
}

/** Chance of the map at a place, 0..1. */
function chanceAt(map: Uint8Array, { width, pxPerMm, originMm }: SquaredSheet, [x, y]: Point): number {
  const i = Math.floor((x - originMm[0]) * pxPerMm);
  const j = Math.floor((y - originMm[1]) * pxPerMm);
  return (map[j * width + i] ?? 0) / 255;
}

/** Half the diameters in use, each once, mm. */
const distinctRadii = [...new Set(cellKinds.map((kind) => cellDiametersMm[kind][1] / 2))];

function fitted(
  sheet: SquaredSheet,
  first: Circle,
  look: Parameters<typeof rimPoints>[2],
): Circle | undefined {
  const points = (circle: Circle) => rimPoints(sheet, circle, look).map(({ at }) => at);
  const coarse = fitCircle(points(first), first, (look?.most ?? 1) > 1 ? toleranceMm : 3 * toleranceMm);
  const circle = coarse && fitCircle(points(coarse), coarse, toleranceMm);
  return circle && Math.abs(circle.radius / first.radius - 1) < mostOff ? circle : undefined;
}

/** Share of the rays on which one of the strongest edges lies within so many mm of the circle, 0..1. */
function shareSeen(sheet: SquaredSheet, circle: Circle, look: { most: number; within: number }): number {
  const seen = new Set<number>();
  for (const { at, ray } of rimPoints(sheet, circle, look)) {
    const off = Math.hypot(at[0] - circle.at[0], at[1] - circle.at[1]) - circle.radius;
    if (Math.abs(off) < look.within) seen.add(ray);
  }
  return seen.size / rimRays;
}

/** Share of the rays on which the disc within differs from what lies round it, 0..1. */
function discShare(sheet: SquaredSheet, { at, radius }: Circle): number {
  let differ = 0;
  for (let ray = 0; ray < rimRays; ray++) {
    const angle = (2 * Math.PI * ray) / rimRays;
    const mean = (from: number, to: number) => meanAlong(sheet, at, angle, from * radius, to * radius);
    const [within, around] = [mean(0.7, 0.92), mean(1.08, 1.25)];
    if (within && around && Math.hypot(...within.map((v, c) => v - around[c])) > leastStep) differ++;
  }
  return differ / rimRays;
}

/** The kind whose diameter is nearest; the first of those that share one. */
function nearestKind(diameterMm: number): CellKind | undefined {
  const off = (kind: CellKind) => {
    const [least, greatest] = cellDiametersMm[kind];
    return Math.abs(Math.log(diameterMm / Math.min(Math.max(diameterMm, least), greatest)));
  };
  const best = cellKinds.reduce((a, b) => (off(b) < off(a) ? b : a));
  return off(best) < mostOff ? best : undefined;
}
