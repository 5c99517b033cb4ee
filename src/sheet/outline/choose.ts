import type { Quad } from '../../geometry/index.ts';
import type { BaseMap } from '../learned/index.ts';
import { mapAgreement } from './baseMap.ts';
import { featuresOf } from './features.ts';
import type { Candidate } from './quads.ts';
import { rankScore } from './rank.ts';
import type { WorkPicture } from './work.ts';

/** Where the base is believed to be: by the trained net, and as cut out of the picture by its colours. */
export interface Maps {
  net?: BaseMap;
  cut?: BaseMap;
}

export interface Chosen {
  candidate: Candidate;
  /** `featureNames`, then the agreement with each map, 0 where there is none. */
  features: number[];
  score: number;
}

/** Every candidate with what it looks like and its score. */
export function judgeAll(
  work: WorkPicture,
  candidates: Candidate[],
  base: { width: number; height: number } | undefined,
  { net, cut }: Maps = {},
): Chosen[] {
  return candidates.map((candidate) => {
    const features = [
      ...featuresOf(work, candidate, base),
      net ? mapAgreement(net, candidate, work) : 0,
      cut ? mapAgreement(cut, candidate, work) : 0,
    ];
    return { candidate, features, score: rankScore(features) };
  });
}

/** The likeliest that are truly different from each other, best first. */
export function choose(judged: Chosen[], most: number): Chosen[] {
  const kept: Chosen[] = [];
  for (const one of [...judged].sort((a, b) => b.score - a.score)) {
    if (kept.length === most) break;
    if (!kept.some((k) => sameOutline(k.candidate.corners, one.candidate.corners))) kept.push(one);
  }
  return kept;
}

/** Whether no corner differs by more than a fiftieth of the mean side, whatever corner they begin at. */
function sameOutline(a: Quad, b: Quad): boolean {
  const side =
    a.reduce((s, p, i) => s + Math.hypot(p[0] - a[(i + 1) % 4][0], p[1] - a[(i + 1) % 4][1]), 0) / 4;
  return a.every((p) => b.some((q) => Math.hypot(p[0] - q[0], p[1] - q[1]) < 0.02 * side));
}
