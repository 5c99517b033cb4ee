import { describe, expect, it } from 'vitest';
import { openChannels, type CopperMask } from '../../src/copper/index.ts';

const [width, height, pxPerMm] = [400, 160, 10];

/** Two strips 5 mm wide, 2 mm of channel between them, of which `from` to `to` passes for copper with a likelihood. */
function rails(likelihood: number, from: number, to: number): CopperMask {
  return masked((i, j) => {
    if (i < 20 || i >= 380) return 0;
    if ((j >= 20 && j < 70) || (j >= 90 && j < 140)) return 250;
    return j >= 70 && j < 90 && i >= from && i < to ? likelihood : 0;
  });
}

/** One strip in which a stretch is doubtful from side to side. */
const strip = (likelihood: number): CopperMask =>
  masked((i, j) => {
    if (i < 20 || i >= 380 || j < 50 || j >= 100) return 0;
    return i >= 190 && i < 210 ? likelihood : 250;
  });

function masked(chance: (i: number, j: number) => number): CopperMask {
  const likelihood = Uint8Array.from({ length: width * height }, (_, k) =>
    chance(k % width, Math.floor(k / width)),
  );
  const filled = likelihood.map((v) => (v > 0 ? 1 : 0));
  const frame = { width, height, pxPerMm, originMm: [0, 0] as const, baseMm: { width: 40, height: 16 } };
  return { ...frame, filled, strict: filled, likelihood, readable: 1, troubles: [], by: 'learned' };
}

describe('Doubtful copper', () => {
  it.each([
    [180, 200],
    [100, 300],
  ])('in the channel between two strips is opened (from %i to %i px)', (from, to) => {
    const { filled, strict } = openChannels(rails(90, from, to));
    expect(filled[80 * width + (from + to) / 2]).toBe(0);
    expect(strict[80 * width + (from + to) / 2]).toBe(0);
    expect(filled[40 * width + 200]).toBe(1);
  });

  it('stays where the net is sure of it: a sliver of foil', () => {
    const mask = rails(230, 180, 200);
    expect(openChannels(mask).filled).toEqual(mask.filled);
  });

  it('stays along one strip, where it is a glare', () => {
    const mask = strip(90);
    expect(openChannels(mask).filled).toEqual(mask.filled);
  });
});
