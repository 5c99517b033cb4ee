import type { Quad } from '../../../src/geometry/index.ts';
import { baseMap } from '../../../src/sheet/learned/index.ts';
import { cutOut } from '../../../src/sheet/outline/cutOut.ts';
import { candidatesIn, look, proposeOutlines } from '../../../src/sheet/outline/propose.ts';
import { cornerErrorMm } from '../cornerErrorMm.ts';
import { shoot } from '../scenes/shoot.ts';
import type { Scene } from '../scenes/shoot.ts';
import type { Choice, Event } from './logit.ts';

/** A candidate this near is the base's outline: the fit to the picture's own pixels does the rest. */
const rightMm = 2;
/** An outline is right when every corner is within this. */
const exactMm = 1;

/** Every third scene is looked at without the trained map: it may fail to load. */
const netOf = async (scene: Scene, seed: number) => (seed % 3 === 0 ? undefined : baseMap(scene.photo));

/** Half of the scenes are hard ones. */
export const sceneOf = (seed: number) => shoot(seed, seed % 2 === 1);

/** The candidates of a scene, by the trained map and by the cut-out beside it. */
export async function candidatesOf(seed: number): Promise<Choice[]> {
  const scene = await sceneOf(seed);
  const { photo, base, corners } = scene;
  const seen = look(photo);
  const net = await netOf(scene, seed);
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

/** What is proposed for a scene, before and after the cut-out, and whether it is right. */
export async function proposalsOf(seed: number): Promise<Event[]> {
  const scene = await sceneOf(seed);
  const { photo, base, corners } = scene;
  const seen = look(photo);
  const net = await netOf(scene, seed);
  const first = proposeOutlines(photo, seen, base, { net });
  const guess = first[0]?.outline.cornersPx.map(([x, y]) => [x / seen.work.step, y / seen.work.step]);
  const cut = await cutOut(seen.work, guess as unknown as Quad | undefined);
  return [...first, ...proposeOutlines(photo, seen, base, { net, cut })].map(({ features, outline }) => ({
    features,
    right: cornerErrorMm(outline.cornersPx, corners, base) < exactMm,
  }));
}
