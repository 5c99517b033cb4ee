import type { Net } from './net.ts';

/** Not square, so that a picture laid on its side is seen; px. */
export const height = 64;
export const width = 128;

/**
 * How far two runners may differ in any logit. The sums are the same in another order: some 1e-4 apart. A tenth moves a
 * chance by 2.5 in 100 at most.
 */
const mostApart = 0.1;

/**
 * Asks both nets about one small picture.
 * @throws Error where the answers are further apart than the order of sums explains
 */
export async function sameAnswer(quick: Net, sure: Net): Promise<void> {
  const planes = picture();
  const apart = farthest(await quick.run(planes, height, width), await sure.run(planes, height, width));
  // Said so that what is no number fails too.
  if (!(apart <= mostApart)) throw new Error(`The graphics processor reckons otherwise, by ${apart}.`);
}

/** The largest difference of two answers; NaN where one holds what is no number, or they are not of one size. */
export function farthest(a: Float32Array, b: Float32Array): number {
  if (a.length !== b.length) return NaN;
  let most = 0;
  for (let k = 0; k < a.length; k++) most = Math.max(most, Math.abs(a[k] - b[k]));
  return most;
}

/** Paper with a copper-coloured strip over it and a ring, under light that falls off: something for each of the maps. */
export function picture(): Float32Array {
  const planes = new Float32Array(3 * height * width);
  const area = height * width;
  for (let k = 0; k < area; k++) {
    const x = k % width;
    const y = Math.floor(k / width);
    const light = 1 - (x + y) / 640;
    const strip = Math.abs(y - 12 - x / 8) < 9;
    const ring = Math.abs(Math.hypot(x - 36, y - 44) - 12) < 4;
    const colour = strip ? copper : ring ? grey : paper;
    const grain = 0.04 * Math.sin(x * 1.7) * Math.sin(y * 2.3);
    colour.forEach((value, c) => (planes[c * area + k] = light * (value + grain)));
  }
  return planes;
}

const paper = [0.93, 0.92, 0.88];
const copper = [0.76, 0.48, 0.32];
const grey = [0.45, 0.46, 0.5];
