import { describe, expect, it } from 'vitest';
import { closeGlints, openPaper } from '../../src/copper/index.ts';
import type { CopperMask } from '../../src/copper/index.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';

/** Greys of a strip of 4 mm on paper with an opening of 1 mm in it: sRGB, 0..255. */
const paper = 200;
const tape = 70;
const [width, height] = [300, 200];
const inStrip = (i: number, j: number): boolean => j >= 80 && j < 120 && i >= 20 && i < 280;
const inOpening = (i: number): boolean => i >= 145 && i < 155;

/** The strip as photographed, its opening in this grey; the mask has it open, or bridged. */
function drawn(opening: number, bridged: boolean): { mask: CopperMask; sheet: SquaredSheet } {
  const rgb = new Uint8Array(3 * width * height).fill(paper);
  const filled = new Uint8Array(width * height);
  const strict = new Uint8Array(width * height);
  const likelihood = new Uint8Array(width * height);
  for (let j = 0; j < height; j++) {
    for (let i = 0; i < width; i++) {
      if (!inStrip(i, j)) continue;
      const k = j * width + i;
      const open = inOpening(i);
      rgb.fill(open ? opening : tape, 3 * k, 3 * k + 3);
      strict[k] = open ? 0 : 1;
      filled[k] = !open || bridged ? 1 : 0;
      likelihood[k] = open ? 70 : 250;
    }
  }
  const frame = { width, height, pxPerMm: 10, originMm: [0, 0] as const, baseMm: { width: 30, height: 20 } };
  return {
    mask: { ...frame, filled, strict, likelihood, readable: 1, troubles: [], by: 'learned' },
    sheet: { ...frame, rgb, toPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1], photoPxPerMm: 10 },
  };
}

const nowhere = (): boolean => false;
const middle = 100 * width + 150;

describe('An opening in a strip', () => {
  it('is tape where it is lighter than the paper: only a mirror is', () => {
    const { mask, sheet } = drawn(255, false);
    const closed = closeGlints(mask, sheet, nowhere);
    for (let j = 80; j < 120; j++)
      for (let i = 145; i < 155; i++) expect(closed.filled[j * width + i]).toBe(1);
  });

  it('stays open where it looks like the paper, is darker, or something lies there', () => {
    for (const grey of [paper, paper - 40]) {
      const { mask, sheet } = drawn(grey, false);
      expect(Buffer.compare(closeGlints(mask, sheet, nowhere).filled, mask.filled)).toBe(0);
    }
    const { mask, sheet } = drawn(255, false);
    expect(closeGlints(mask, sheet, () => true).filled).toEqual(mask.filled);
  });

  it('stays open where bright facets blur into its borders but paper lies between', () => {
    const { mask, sheet } = drawn(paper - 10, false);
    const light = (k: number): Uint8Array => sheet.rgb.fill(255, 3 * k, 3 * k + 3);
    for (let j = 80; j < 120; j++) light(j * width + (j % 2 ? 145 : 154));
    expect(Buffer.compare(closeGlints(mask, sheet, nowhere).filled, mask.filled)).toBe(0);
    // As many bright places as paper between them: a mirror shows through.
    for (let j = 80; j < 120; j++) for (let i = 147; i < 153; i++) light(j * width + i);
    expect(closeGlints(mask, sheet, nowhere).filled[middle]).toBe(1);
  });

  it('is tape where it is burnt out to white and the net doubts it, not where it is only lighter', () => {
    const closes = (opening: number, likelihood: number) => {
      const { mask, sheet } = drawn(opening, false);
      for (let k = 0; k < width * height; k++) if (mask.likelihood[k] === 70) mask.likelihood[k] = likelihood;
      return closeGlints(mask, sheet, nowhere).filled[middle] === 1;
    };
    expect([closes(255, 30), closes(235, 30), closes(235, 70), closes(255, 0)]).toEqual([
      true,
      false,
      true,
      false,
    ]);
  });

  it('is opened again where a bridge shows nothing but paper, and kept where it shines', () => {
    const plain = drawn(paper, true);
    expect(openPaper(plain.mask, plain.sheet, nowhere).filled[middle]).toBe(0);
    const shining = drawn(255, true);
    expect(openPaper(shining.mask, shining.sheet, nowhere).filled[middle]).toBe(1);
  });

  it('is not bridged through the shadow of a lamp', () => {
    const { mask, sheet } = drawn(110, true);
    expect(openPaper(mask, sheet, nowhere).filled[middle]).toBe(1);
    expect(openPaper(mask, sheet, () => true).filled[middle]).toBe(0);
  });
});
