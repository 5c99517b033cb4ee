import type { Quad } from '../../geometry/index.ts';
import { featuresOf } from './features.ts';
import type { Candidate } from './quads.ts';
import { rankScore } from './rank.ts';
import type { WorkPicture } from './work.ts';

export interface Chosen {
  candidate: Candidate;
  features: number[];
  score: number;
}

/** The likeliest candidates that are truly different from each other, best first. */
export function choose(
  work: WorkPicture,
  candidates: Candidate[],
  base: { width: number; height: number } | undefined,
  most: number,
): Chosen[] {
  const judged = candidates.map((candidate) => {
    const features = featuresOf(work, candidate, base);
    return { candidate, features, score: rankScore(features) };
  });
  judged.sort((a, b) => b.score - a.score);
  const kept: Chosen[] = [];
  for (const one of judged) {
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
