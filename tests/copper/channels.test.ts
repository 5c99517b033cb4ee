import { describe, expect, it } from 'vitest';
import { openBesideLamps, openChannels, openOnPatches, type CopperMask } from '../../src/copper/index.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';

const [width, height, pxPerMm] = [400, 160, 10];
type Rgb = readonly [number, number, number];
const paper: Rgb = [225, 215, 200];
const foil: Rgb = [140, 88, 62];
/** Paper that takes on the warm light of the strips beside it; foil in shade; paper in shade. */
const warm: Rgb = [222, 200, 176];
const darkFoil: Rgb = [64, 40, 28];
const shade: Rgb = [140, 134, 124];

interface Drawn {
  mask: CopperMask;
  sheet: SquaredSheet;
}

/** Two strips 5 mm wide, 2 mm of channel between them, of which `from` to `to` passes for copper with a likelihood. */
function rails(likelihood: number, from: number, to: number, looks: Rgb = warm, on: Rgb = paper): Drawn {
  return drawn((i, j) => {
    if (i < 20 || i >= 380) return [0, on];
    if ((j >= 20 && j < 70) || (j >= 90 && j < 140)) return [250, foil];
    return j >= 70 && j < 90 && i >= from && i < to ? [likelihood, looks] : [0, on];
  });
}

/** One strip in which a stretch is doubtful from side to side. */
const strip = (likelihood: number): Drawn =>
  drawn((i, j) => {
    if (i < 20 || i >= 380 || j < 50 || j >= 100) return [0, paper];
    return [i >= 190 && i < 210 ? likelihood : 250, foil];
  });

function drawn(look: (i: number, j: number) => [number, Rgb]): Drawn {
  const likelihood = new Uint8Array(width * height);
  const rgb = new Uint8Array(3 * width * height);
  for (let k = 0; k < likelihood.length; k++) {
    const [chance, colour] = look(k % width, Math.floor(k / width));
    likelihood[k] = chance;
    rgb.set(colour, 3 * k);
  }
  const filled = likelihood.map((v) => (v > 0 ? 1 : 0));
  const frame = { width, height, pxPerMm, originMm: [0, 0] as const, baseMm: { width: 40, height: 16 } };
  return {
    mask: { ...frame, filled, strict: filled, likelihood, readable: 1, troubles: [], by: 'learned' },
    sheet: { ...frame, rgb, toPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1], photoPxPerMm: 10 },
  };
}

const nowhere = (): boolean => false;
const middle = 80 * width + 200;

describe('Doubtful copper', () => {
  it.each([
    [180, 200],
    [100, 300],
  ])('in the channel between two strips is opened (from %i to %i px)', (from, to) => {
    const { mask, sheet } = rails(90, from, to);
    const { filled, strict } = openChannels(mask, sheet, nowhere);
    expect(filled[80 * width + (from + to) / 2]).toBe(0);
    expect(strict[80 * width + (from + to) / 2]).toBe(0);
    expect(filled[40 * width + 200]).toBe(1);
  });

  it('stays where the net is sure of it: a sliver of foil', () => {
    const { mask, sheet } = rails(230, 180, 200);
    expect(openChannels(mask, sheet, nowhere).filled).toEqual(mask.filled);
  });

  it('stays where it has the strips’ colour, however doubtful: a sliver in shade', () => {
    for (const looks of [foil, darkFoil]) {
      const { mask, sheet } = rails(120, 195, 206, looks);
      expect(openChannels(mask, sheet, nowhere).filled).toEqual(mask.filled);
    }
  });

  it('is opened beside a lamp whatever its colour: in its shade paper is as dark as foil', () => {
    const { mask, sheet } = rails(120, 195, 206, darkFoil);
    expect(openChannels(mask, sheet, () => true).filled[middle]).toBe(0);
  });

  it('stays along one strip, where it is a glare', () => {
    const { mask, sheet } = strip(90);
    expect(openChannels(mask, sheet, nowhere).filled).toEqual(mask.filled);
  });
});

describe('Copper that the nets are sure of in the channel beside a lamp', () => {
  const lamp = { plus: [20, 6.2] as const, minus: [20, 9.8] as const };

  it.each([
    ['in shade', shade],
    ['as it is', paper],
  ])('is opened where it is the paper %s', (_, looks) => {
    const { mask, sheet } = rails(240, 215, 230, looks);
    const { filled, strict } = openBesideLamps(mask, sheet, [lamp]);
    for (let i = 215; i < 230; i++) expect(filled[80 * width + i] + strict[80 * width + i]).toBe(0);
    expect(filled[40 * width + 200]).toBe(1);
  });

  it('stays where it has the tint of foil: a bridge beside a lamp', () => {
    for (const looks of [foil, darkFoil]) {
      const { mask, sheet } = rails(240, 215, 230, looks);
      expect(openBesideLamps(mask, sheet, [lamp]).filled).toEqual(mask.filled);
    }
  });

  it('stays on paper of the copper’s own tint, where colour tells nothing', () => {
    const { mask, sheet } = rails(240, 215, 230, foil, [176, 111, 78]);
    expect(openBesideLamps(mask, sheet, [lamp]).filled).toEqual(mask.filled);
  });

  it('stays away from lamps', () => {
    const { mask, sheet } = rails(240, 300, 320, paper);
    expect(openBesideLamps(mask, sheet, [lamp]).filled).toEqual(mask.filled);
  });
});

describe('Doubtful copper on a patch', () => {
  const white: Rgb = [235, 236, 236];
  const kraft: Rgb = [150, 118, 84];
  const patch = [
    [15, 1],
    [25, 1],
    [25, 15],
    [15, 15],
  ] as const;

  /** A white patch on kraft with a strip along it; some of the patch, and some in the strip, passes for doubtful copper. */
  const patched = (looks: Rgb, inStrip: Rgb) =>
    drawn((i, j) => {
      const on = i >= 150 && i < 250 && j >= 10 && j < 150;
      if (j >= 60 && j < 100) return i >= 190 && i < 200 ? [120, inStrip] : [250, foil];
      if (on && i >= 210 && j < 60) return [120, looks];
      return [0, on ? white : kraft];
    });
  const onPatch = 30 * width + 230;
  const inStrip = 80 * width + 195;

  it('is opened where it has the colour of the patch, and stays in the strip that crosses it', () => {
    const { mask, sheet } = patched(white, foil);
    const { filled, strict } = openOnPatches(mask, sheet, [patch]);
    expect([filled[onPatch], strict[onPatch], filled[inStrip]]).toEqual([0, 0, 1]);
    expect(filled[80 * width + 160]).toBe(1);
  });

  it('stays where it has the tint of foil, and where no patch is known', () => {
    const { mask, sheet } = patched(foil, foil);
    expect(openOnPatches(mask, sheet, [patch]).filled[onPatch]).toBe(1);
    const same = patched(white, foil);
    expect(openOnPatches(same.mask, same.sheet, []).filled[onPatch]).toBe(1);
  });

  it('stays where the strip itself has the colour of the patch: colour tells nothing then', () => {
    const { mask, sheet } = drawn((i, j) => {
      const on = i >= 150 && i < 250 && j >= 10 && j < 150;
      if (j >= 60 && j < 100) return [250, white];
      return on && i >= 210 && j < 60 ? [120, white] : [0, on ? white : kraft];
    });
    expect(openOnPatches(mask, sheet, [patch]).filled[onPatch]).toBe(1);
  });
});
