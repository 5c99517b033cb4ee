import type { Quad } from '../../geometry/index.ts';
import type { BaseMap } from '../learned/index.ts';
import { mapAgreement } from './baseMap.ts';
import { featuresOf, tapeSide } from './features.ts';
import type { Candidate } from './quads.ts';
import { unlikeliness } from './priors.ts';
import { rankScore } from './rank.ts';
import type { WorkPicture } from './work.ts';

/** Rank points for full agreement with a base map: an outline that takes in a tenth of table loses about one. */
const mapWeight = 12;

/** A side with more of its length on the edge of a strip is held against an outline, so many points a whole side. */
const tapeShare = 0.2;
const tapePoints = 8;

export interface Chosen {
  candidate: Candidate;
  features: number[];
  score: number;
  /** Points against it that the fitted weights do not know of; they are in the score. */
  against: number;
}

/** The likeliest candidates that are truly different from each other, best first. */
export function choose(
  work: WorkPicture,
  candidates: Candidate[],
  base: { width: number; height: number } | undefined,
  most: number,
  map?: BaseMap,
): Chosen[] {
  const judged = candidates.map((candidate) => {
    const features = featuresOf(work, candidate, base);
    const against = unlikeliness(work, candidate);
    const agreement = map ? mapWeight * mapAgreement(map, candidate, work) : 0;
    return { candidate, features, against, score: rankScore(features) - against + agreement };
  });
  judged.sort((a, b) => b.score - a.score);
  const kept: Chosen[] = [];
  for (const one of judged) {
    if (kept.length === most) break;
    if (!kept.some((k) => sameOutline(k.candidate.corners, one.candidate.corners))) kept.push(one);
  }
  for (const one of kept) {
    const points = tapePoints * Math.max(0, tapeSide(work, one.candidate.corners, base) - tapeShare);
    one.score -= points;
    one.against += points;
  }
  return kept.sort((a, b) => b.score - a.score);
}

/** Whether no corner differs by more than a fiftieth of the mean side, whatever corner they begin at. */
function sameOutline(a: Quad, b: Quad): boolean {
  const side =
    a.reduce((s, p, i) => s + Math.hypot(p[0] - a[(i + 1) % 4][0], p[1] - a[(i + 1) % 4][1]), 0) / 4;
  return a.every((p) => b.some((q) => Math.hypot(p[0] - q[0], p[1] - q[1]) < 0.02 * side));
}
