import type { Point, Quad } from '../../geometry/index.ts';
import type { Photo } from '../../photo/index.ts';
import { turnCorners } from '../homography.ts';
import type { Outline } from '../types.ts';
import type { BaseMap } from '../learned/index.ts';
import { mapLines } from './baseMap.ts';
import { certaintyFeatures, certaintyOf } from './certainty.ts';
import { choose, judgeAll } from './choose.ts';
import type { Chosen, Maps } from './choose.ts';
import { findEdges, scaled } from './edges.ts';
import { fitSides } from './fitSides.ts';
import type { FittedSides } from './fitSides.ts';
import { findLines, mergeScales } from './lines.ts';
import type { Line } from './lines.ts';
import { outsideEdge } from './outsideEdge.ts';
import { poseMisfit } from './pose.ts';
import { candidateQuads } from './quads.ts';
import { quarter, workPicture } from './work.ts';
import type { WorkPicture } from './work.ts';

/** Perimeter of a usual card where the size is not known: it only sets how far round the sides are looked at. */
const usualPerimeterMm = 500;
/** As many figures are looked at closely. */
const mostCandidates = 100;

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
  const fitted = choose(candidatesIn(seen, base, maps), 4).flatMap((chosen) => {
    const fit = fitOne(photo, chosen, seen.work.step, base);
    return fit ? [fit] : [];
  });
  return fitted
    .slice(0, 2)
    .map((one) => proposal(photo, one, leadOf(one, fitted), base, maps))
    .sort((a, b) => b.outline.certainty - a.outline.certainty);
}

/** Every figure that could be the base, with what it looks like and its score; in no order. */
export function candidatesIn({ work, lines }: Seen, base: BaseMm | undefined, maps: Maps): Chosen[] {
  const all = [maps.net, maps.cut].reduce((known, map) => (map ? withMap(known, work, map) : known), lines);
  return judgeAll(work, candidateQuads(all, work, base, mostCandidates), base, maps);
}

/** The photograph at work scale with its straight lines, found at full and at a quarter of that scale. */
export interface Seen {
  work: WorkPicture;
  lines: Line[];
}

export function look(photo: Photo): Seen {
  const work = workPicture(photo);
  const fine = findLines(findEdges(work), work.width, work.height, 60, 1);
  const coarseEdges = scaled(findEdges(quarter(work)), 4);
  const coarse = findLines(coarseEdges, work.width, work.height, 40, 4);
  return { work, lines: mergeScales(fine, coarse, coarseEdges, 4, work) };
}

function withMap(lines: Line[], work: WorkPicture, map: BaseMap): Line[] {
  const border = mapLines(map, work);
  return mergeScales(lines, border.lines, border.edges, border.grain, work);
}

interface Fitted {
  chosen: Chosen;
  fit: FittedSides;
  pxPerMm: number;
}

function fitOne(photo: Photo, chosen: Chosen, step: number, base: BaseMm | undefined): Fitted | undefined {
  const quad = chosen.candidate.corners.map(([x, y]) => [x * step, y * step]) as unknown as Quad;
  const pxPerMm = perimeter(quad) / (base ? 2 * (base.width + base.height) : usualPerimeterMm);
  const fit = fitSides(photo, quad, 3 * step + 2, pxPerMm);
  return fit && { chosen, fit, pxPerMm };
}

/** By how much a proposal outranks the best other one that, once fitted, is truly another outline. */
function leadOf(one: Fitted, all: Fitted[]): number {
  const others = all.filter(
    (o) => o !== one && farthest(o.fit.cornersPx, one.fit.cornersPx) > 1.5 * one.pxPerMm,
  );
  return others.length === 0 ? 10 : one.chosen.score - Math.max(...others.map((o) => o.chosen.score));
}

/** Largest distance of a corner from the other figure's nearest, px. */
function farthest(a: Quad, b: Quad): number {
  return Math.max(...a.map((p) => Math.min(...b.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1])))));
}

function proposal(
  photo: Photo,
  { chosen, fit, pxPerMm }: Fitted,
  lead: number,
  base: BaseMm | undefined,
  maps: Maps,
): Proposal {
  const centre: Point = [photo.width / 2, photo.height / 2];
  const long = Math.max(photo.width, photo.height);
  const misfit = base ? poseMisfit(fit.cornersPx, base, centre, long).misfit : 0.05;
  const residualMm = fit.residualPx / pxPerMm;
  const features = certaintyFeatures(chosen, lead, fit, misfit, residualMm, maps);
  const certainty = certaintyOf(features) * (doubtful(photo, fit, pxPerMm) ? doubt : 1);
  return {
    features,
    outline: { cornersPx: pictureUp(fit.cornersPx, base), certainty, k1: fit.k1, residualMm },
  };
}

/** What the weights have seen too seldom to learn leaves this much of the certainty: too little to be believed. */
const doubt = 0.4;
/** A corner this far off the picture, in parts of its long side, is not seen. */
const offPicture = 0.005;
/** Where so much of a side has a stronger edge just outside of it, that edge may be the border. */
const mostOutside = 0.6;

/** A corner off the picture, or a rule or fold taken for the border beside it. */
function doubtful(photo: Photo, { cornersPx, k1 }: FittedSides, pxPerMm: number): boolean {
  const { width, height } = photo;
  const beyond = Math.max(...cornersPx.map(([x, y]) => Math.max(-x, -y, x - width, y - height)));
  if (beyond > offPicture * Math.max(width, height)) return true;
  return outsideEdge(photo, cornersPx, k1, pxPerMm) > mostOutside;
}

function perimeter(q: Quad): number {
  return q.reduce((sum, p, i) => sum + Math.hypot(q[(i + 1) % 4][0] - p[0], q[(i + 1) % 4][1] - p[1]), 0);
}

/** Turns the corners so that the first lies uppermost left; by halves where the base is not square. */
function pictureUp(quad: Quad, base: BaseMm | undefined): Quad {
  const square = !base || Math.abs(base.width - base.height) < 0.01 * base.width;
  const turns = square ? [0, 1, 2, 3] : [0, 2];
  const lean = ([x, y]: Point) => x + y;
  return turns.map((t) => turnCorners(quad, t)).reduce((a, b) => (lean(b[0]) < lean(a[0]) ? b : a));
}
