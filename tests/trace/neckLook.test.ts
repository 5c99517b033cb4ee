import { describe, expect, it } from 'vitest';
import type { CopperMask } from '../../src/copper/index.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';
import { lookAtNeck } from '../../src/trace/neckLook.ts';

/** A strip of 4 mm on grey paper, 10 px/mm; a slit of 0.6 mm leaves 1 mm of it in the mask. sRGB, 0..255. */
const paper = 200;
const tape = 70;
const [width, height] = [300, 200];
const inStrip = (i: number, j: number): boolean => j >= 80 && j < 120 && i >= 20 && i < 280;
const inSlit = (i: number, j: number): boolean => i >= 147 && i < 153 && j >= 80 && j < 110;

function slit(shows: number): { mask: CopperMask; sheet: SquaredSheet } {
  const rgb = new Uint8Array(3 * width * height).fill(paper);
  const filled = new Uint8Array(width * height);
  for (let k = 0; k < filled.length; k++) {
    const [i, j] = [k % width, Math.floor(k / width)];
    if (!inStrip(i, j)) continue;
    filled[k] = inSlit(i, j) ? 0 : 1;
    rgb.fill(inSlit(i, j) ? shows : tape, 3 * k, 3 * k + 3);
  }
  const frame = { width, height, pxPerMm: 10, originMm: [0, 0] as const, baseMm: { width: 30, height: 20 } };
  const likelihood = filled.map((v) => 250 * v);
  return {
    mask: { ...frame, filled, strict: filled, likelihood, readable: 1, troubles: [], by: 'learned' },
    sheet: { ...frame, rgb, toPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1], photoPxPerMm: 10 },
  };
}

const neck = { piece: 1, at: [15, 11.5] as [number, number], widthMm: 1, usualMm: 4 };

describe('A neck beside a slit', () => {
  it('is a nick where paper shows in the slit', () => {
    const { mask, sheet } = slit(paper);
    const seen = lookAtNeck(neck, mask, sheet);
    expect(seen.paper).toBeGreaterThan(0.9);
    expect(seen.sure).toBeGreaterThan(0.9);
  });

  it('is none where foil shows in it, though bare paper lies beside the strip', () => {
    const { mask, sheet } = slit(tape);
    expect(lookAtNeck(neck, mask, sheet).paper).toBeLessThan(0.1);
  });
});
