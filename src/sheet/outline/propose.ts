import type { Point, Quad } from '../../geometry/index.ts';
import type { Photo } from '../../photo/index.ts';
import { mostBow } from '../bow.ts';
import { shrinkPhoto } from '../shrink.ts';
import { turnOutline } from '../turnOutline.ts';
import type { Outline } from '../types.ts';
import { mapBorder, mapLines } from './baseMap.ts';
import { betweenEdges } from './betweenEdges.ts';
import { certaintyFeatures, certaintyOf } from './certainty.ts';
import { choose, judgeAll } from './choose.ts';
import type { Chosen, Maps } from './choose.ts';
import { askew } from './askew.ts';
import { findEdges, scaled } from './edges.ts';
import type { Edges } from './edges.ts';
import { featureNames } from './features.ts';
import { fitSides } from './fitSides.ts';
import type { FittedSides } from './fitSides.ts';
import { followBow } from './followBow.ts';
import { looseEnds } from './looseEnds.ts';
import { innerBorder } from './innerBorder.ts';
import { findLines, mergeScales, runsAlong } from './lines.ts';
import type { Line } from './lines.ts';
import { outsideEdge } from './outsideEdge.ts';
import { poseMisfit } from './pose.ts';
import { candidateQuads } from './quads.ts';
import type { Candidate } from './quads.ts';
import { quarter, workPicture } from './work.ts';
import type { WorkPicture } from './work.ts';

/** Perimeter of a usual card where the size is not known: it only sets how far round the sides are looked at. */
const usualPerimeterMm = 500;
const usualBase = { width: 125, height: 125 };
/** As many figures are looked at closely, and where they leave a doubt, so that the sheet is cut out too. */
const mostCandidates = { first: 100, inDoubt: 200 };
/** And as many more of those along the border of each map. */
const mostByMap = 40;
/** So many of the likeliest are fitted to the photograph at most: two are proposed, others may show how far they lead. */
const mostFitted = 4;

export interface BaseMm {
  width: number;
  height: number;
}

/** One judged proposal, with what its certainty rests on. */
export interface Proposal {
  outline: Outline;
  features: number[];
}

/** The likeliest outlines, most certain first. */
export function proposeOutlines(
  photo: Photo,
  seen: Seen,
  base: BaseMm | undefined,
  maps: Maps = {},
): Proposal[] {
  const nth = oneByOne(choose(candidatesIn(seen, base, maps), mostFitted), (chosen) =>
    fitOne(photo, chosen, seen, base),
  );
  return [nth(0), nth(1)]
    .flatMap((one) => (one ? [proposal(photo, one, leadOf(one, nth), seen, base, maps)] : []))
    .sort((a, b) => b.outline.certainty - a.outline.certainty);
}

/** What is made of some items, each when it is first asked for; those of which nothing can be made are passed over. */
function oneByOne<A, B>(items: A[], make: (item: A) => B | undefined): (n: number) => B | undefined {
  const made: B[] = [];
  let next = 0;
  return (n) => {
    while (made.length <= n && next < items.length) {
      const one = make(items[next++]);
      if (one) made.push(one);
    }
    return made[n];
  };
}

/** Every figure that could be the base, with what it looks like and its score; in no order. */
export function candidatesIn({ work, lines }: Seen, base: BaseMm | undefined, maps: Maps): Chosen[] {
  const borders = [maps.net, maps.cut].flatMap((map) => (map ? [mapLines(map, work)] : []));
  const all = borders.reduce(
    (known, { lines: coarse, edges, grain }) => mergeScales(known, coarse, edges, grain, work),
    lines,
  );
  const most = maps.cut ? mostCandidates.inDoubt : mostCandidates.first;
  const anywhere = candidateQuads(all, work, base, most);
  // On a patterned table the figures of its lines would crowd out all others.
  const byMap = borders.flatMap((border) =>
    candidateQuads(alongBorder(all, border, work), work, base, mostByMap),
  );
  const known = new Set(anywhere.map(sidesOf));
  const more = byMap.filter((c) => !known.has(sidesOf(c)) && known.add(sidesOf(c)));
  return judgeAll(work, [...anywhere, ...more], base, maps);
}

const sidesOf = ({ corners }: Candidate) =>
  corners
    .map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`)
    .sort()
    .join(' ');

/** Lines that run where a map has a border, within what it tells. */
function alongBorder(all: Line[], { lines, grain }: ReturnType<typeof mapLines>, work: WorkPicture): Line[] {
  return all.filter((line) => lines.some((border) => runsAlong(line, border, 3 * grain, work)));
}

/** The photograph at work scale with its straight lines, found at full and at a quarter of that scale. */
export interface Seen {
  work: WorkPicture;
  lines: Line[];
  /** The edges at full scale. */
  edges: Edges;
  /** Figures fitted to the photograph so far. */
  fits: Map<string, FittedSides | undefined>;
}

export function look(photo: Photo): Seen {
  const work = workPicture(photo);
  const edges = findEdges(work);
  const fine = findLines(edges, work.width, work.height, 60, 1);
  const coarseEdges = scaled(findEdges(quarter(work)), 4);
  const coarse = findLines(coarseEdges, work.width, work.height, 40, 4);
  return { work, lines: mergeScales(fine, coarse, coarseEdges, 4, work), edges, fits: new Map() };
}

interface Fitted {
  chosen: Chosen;
  fit: FittedSides;
  pxPerMm: number;
}

function fitOne(
  photo: Photo,
  chosen: Chosen,
  { work, fits }: Seen,
  base: BaseMm | undefined,
): Fitted | undefined {
  const quad = scaledQuad(chosen.candidate.corners, work.step);
  const pxPerMm = perimeter(quad) / (base ? 2 * (base.width + base.height) : usualPerimeterMm);
  const key = [quad, base?.width, base?.height].join();
  if (!fits.has(key)) fits.set(key, fitQuad(photo, quad, work.step, pxPerMm, base));
  const fit = fits.get(key);
  return fit && { chosen, fit, pxPerMm };
}

function fitQuad(
  photo: Photo,
  quad: Quad,
  step: number,
  pxPerMm: number,
  base: BaseMm | undefined,
): FittedSides | undefined {
  const { seen, times } = fineEnough(photo, pxPerMm);
  const small = scaledQuad(quad, 1 / times);
  const straight = fitSides(seen, small, (3 * step) / times + 2, pxPerMm / times);
  const followed = straight && base && followBow(seen, straight, base, pxPerMm / times);
  const fit = followed ? betweenEdges(seen, followed.fit, base, pxPerMm / times, followed.edges) : straight;
  return fit && { ...fit, cornersPx: scaledQuad(fit.cornersPx, times), residualPx: fit.residualPx * times };
}

/** At this scale edges lie where a picture of twice the scale has them, to a hundredth of a mm. */
const enoughPxPerMm = 8;

/** The photograph at the smallest of its halves that shows the sheet finely enough, and the px of it a px of that. */
function fineEnough(photo: Photo, pxPerMm: number): { seen: Photo; times: number } {
  const level = Math.max(0, Math.floor(Math.log2(pxPerMm / enoughPxPerMm)));
  if (level === 0) return { seen: photo, times: 1 };
  const { width, height, step, pixels } = shrinkPhoto(photo, level);
  return { seen: { name: photo.name, width, height, rgba: new Uint8Array(pixels.buffer) }, times: step };
}

const scaledQuad = (quad: Quad, times: number) =>
  quad.map(([x, y]) => [x * times, y * times]) as unknown as Quad;

/** By how much a proposal outranks the best other one that, once fitted, is truly another outline. */
function leadOf(one: Fitted, nth: (n: number) => Fitted | undefined): number {
  for (let n = 0; ; n++) {
    const other = nth(n);
    if (!other) return 10;
    if (other !== one && farthest(other.fit.cornersPx, one.fit.cornersPx) > 1.5 * one.pxPerMm)
      return one.chosen.score - other.chosen.score;
  }
}

/** Largest distance of a corner from the other figure's nearest, px. */
function farthest(a: Quad, b: Quad): number {
  return Math.max(...a.map((p) => Math.min(...b.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1])))));
}

function proposal(
  photo: Photo,
  { chosen, fit, pxPerMm }: Fitted,
  lead: number,
  { work, edges }: Seen,
  base: BaseMm | undefined,
  maps: Maps,
): Proposal {
  const centre: Point = [photo.width / 2, photo.height / 2];
  const long = Math.max(photo.width, photo.height);
  const misfit = base ? poseMisfit(fit.cornersPx, base, centre, long).misfit : 0.05;
  const residualMm = fit.residualPx / pxPerMm;
  const { seen: fine, times } = fineEnough(photo, pxPerMm);
  const small = { ...fit, cornersPx: scaledQuad(fit.cornersPx, 1 / times) };
  const outside = outsideEdge(fine, small, pxPerMm / times);
  const corners = scaledQuad(fit.cornersPx, 1 / work.step);
  // Under 0 the trained map sees the base go on past a side.
  const borders = [maps.net, maps.cut].flatMap((map) => (map ? mapBorder(map, corners, work) : [0, 0, 0]));
  const turned = askew(edges, corners, base ?? usualBase);
  const features = certaintyFeatures(chosen, lead, fit, misfit, residualMm, outside, borders, maps);
  const sides = certaintyOf(features, looseEnds(fit.seenAt));
  const doubted =
    outside > mostOutside ||
    (turned.against > mostAskew.against && turned.of > mostAskew.of) ||
    offPicture(photo, fit) ||
    elsewhereOnMap(chosen, maps) ||
    (maps.net !== undefined && borders[0] < 0) ||
    (sides >= believed && innerBorder(work, corners, base ?? usualBase) > mostInner);
  const certainty = sides * (doubted ? doubt : 1);
  return {
    features,
    outline: pictureUp(
      {
        cornersPx: fit.cornersPx,
        certainty,
        k1: fit.k1,
        residualMm: Math.max(residualMm, fit.bow ? mostBow(fit.bow) : 0),
        ...(fit.bow ? { bow: fit.bow } : {}),
      },
      base,
    ),
  };
}

/** From this certainty on an outline is believed by itself. */
const believed = 0.5;
/** What the weights have seen too seldom to learn leaves this much of the certainty: too little to be believed. */
const doubt = 0.4;
/** A corner this far off the picture, in parts of its long side, is not seen. */
const mostBeyond = 0.005;
/** Where so much of a side has a stronger edge just outside of it, a rule or fold was taken for the border. */
const mostOutside = 0.6;

/** Where nearly all that runs straight on a figure, and that is much, runs askew to its sides, the base lies on it turned. */
const mostAskew = { against: 0.85, of: 0.06 };

/** And where a figure of the base's shape shows this clearly within it. */
const mostInner = 0.55;

/** A figure in which the trained map sees so little more of the base than round it is another sheet, however clear. */
const leastOnMap = 0.2;
const onMapAt = featureNames.length;

function elsewhereOnMap({ features }: Chosen, { net }: Maps): boolean {
  return net !== undefined && features[onMapAt] < leastOnMap;
}

function offPicture({ width, height }: Photo, { cornersPx }: FittedSides): boolean {
  const beyond = Math.max(...cornersPx.map(([x, y]) => Math.max(-x, -y, x - width, y - height)));
  return beyond > mostBeyond * Math.max(width, height);
}

function perimeter(q: Quad): number {
  return q.reduce((sum, p, i) => sum + Math.hypot(q[(i + 1) % 4][0] - p[0], q[(i + 1) % 4][1] - p[1]), 0);
}

/** Turns the corners so that the first lies uppermost left; by halves where the base is not square. */
function pictureUp(outline: Outline, base: BaseMm | undefined): Outline {
  const square = !base || Math.abs(base.width - base.height) < 0.01 * base.width;
  const lean = ([x, y]: Point) => x + y;
  const at = outline.cornersPx.map(lean);
  const turns = (square ? [0, 1, 2, 3] : [0, 2]).reduce((a, b) => (at[b] < at[a] ? b : a));
  return turnOutline(outline, turns);
}
