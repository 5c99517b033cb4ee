import type { Quad } from '../../../src/geometry/index.ts';
import type { Photo } from '../../../src/photo/index.ts';
import type { BaseMap } from '../../../src/sheet/learned/index.ts';
import { cutOut } from '../../../src/sheet/outline/cutOut.ts';
import { candidatesIn, look, proposeOutlines } from '../../../src/sheet/outline/propose.ts';
import { cornerErrorMm } from '../cornerErrorMm.ts';
import type { Choice, Event } from './logit.ts';

/** A photograph of a base with its true corners, and the trained map of it where there is one. */
export interface View {
  photo: Photo;
  base: { width: number; height: number };
  corners: Quad;
  net?: BaseMap;
}

/** A candidate this near is the base's outline: the fit to the picture's own pixels does the rest. */
const rightMm = 2;
/** An outline is right when every corner is within this. */
const exactMm = 1;

/** The candidates in a photograph, by the trained map and by the cut-out beside it. */
export async function candidatesOf({ photo, base, corners, net }: View): Promise<Choice[]> {
  const seen = look(photo);
  const first = candidatesIn(seen, base, { net });
  const best = first.reduce<(typeof first)[number] | undefined>(
    (a, b) => (a && a.score > b.score ? a : b),
    undefined,
  );
  const cut = await cutOut(seen.work, best?.candidate.corners);
  return [first, candidatesIn(seen, base, { net, cut })].map((all) => ({
    features: all.map(({ features }) => features),
    right: all.map(({ candidate }) => {
      const found = candidate.corners.map(([x, y]) => [
        x * seen.work.step,
        y * seen.work.step,
      ]) as unknown as Quad;
      return cornerErrorMm(found, corners, base) < rightMm;
    }),
  }));
}

/** What is proposed for a photograph, before and after the cut-out, and whether it is right. */
export async function proposalsOf({ photo, base, corners, net }: View): Promise<Event[]> {
  const seen = look(photo);
  const first = proposeOutlines(photo, seen, base, { net });
  const guess = first[0]?.outline.cornersPx.map(([x, y]) => [x / seen.work.step, y / seen.work.step]);
  const cut = await cutOut(seen.work, guess as unknown as Quad | undefined);
  return [...first, ...proposeOutlines(photo, seen, base, { net, cut })].map(({ features, outline }) => ({
    features,
    right: cornerErrorMm(outline.cornersPx, corners, base) < exactMm,
  }));
}
