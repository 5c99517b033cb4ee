import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { measurePhoto, smallestGapMm } from '../../src/photo/index.ts';
import type { Photo } from '../../src/photo/index.ts';
import { randomFrom } from '../generate/random.ts';

const width = 900;
const height = 700;

/** Dark tape-like bars on grainy paper, upright and level, then blurred by a Gaussian of known sigma. */
async function bars(sigma: number, grain: number, light = 1): Promise<Photo> {
  const r = randomFrom(5);
  const rgb = Buffer.alloc(width * height * 3);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const dark = x % 90 < 30 || y % 120 < 40;
      rgb.fill(Math.min(255, (dark ? 60 : 200) * light), (y * width + x) * 3, (y * width + x) * 3 + 3);
    }
  const soft = await sharp(rgb, { raw: { width, height, channels: 3 } })
    .blur(sigma)
    .raw()
    .toBuffer();
  const rgba = new Uint8Array(width * height * 4).fill(255);
  for (let i = 0; i < width * height; i++) {
    const v = Math.min(255, Math.max(0, soft[3 * i] + grain * r.normal()));
    rgba.fill(v, 4 * i, 4 * i + 3);
  }
  return { name: 'bars', width, height, rgba };
}

describe('measurePhoto', () => {
  // The 10-90 % rise of a Gaussian-blurred step is 2 x 1.2816 sigma: the 90 % quantile of the normal distribution.
  it.each([1.2, 2, 3.5])('measures the edge spread of a blur of sigma %f px', async (sigma) => {
    const { spreadPx } = measurePhoto(await bars(sigma, 0));
    expect(spreadPx! / (2 * 1.2816 * sigma)).toBeGreaterThan(0.85);
    expect(spreadPx! / (2 * 1.2816 * sigma)).toBeLessThan(1.15);
  });

  it('is not fooled by paper grain', async () => {
    const still = measurePhoto(await bars(2, 0)).spreadPx!;
    const grainy = measurePhoto(await bars(2, 3)).spreadPx!;
    expect(grainy / still).toBeGreaterThan(0.7);
    expect(grainy / still).toBeLessThan(1.2);
  });

  it('says when the wanted gap cannot be seen, and only then', async () => {
    expect(measurePhoto(await bars(0.8, 1), 10).say).toEqual([]);
    const soft = measurePhoto(await bars(3.5, 1), 10);
    expect(soft.smallestGapMm).toBeGreaterThan(0.8);
    expect(soft.say).toContain('too soft to see a gap of 0.8 mm here');
  });

  it('shows a finer gap the more pixels a mm has', () => {
    expect(smallestGapMm(2, 20)).toBeCloseTo(smallestGapMm(2, 10) / 2, 12);
  });

  it('says that a photograph is dark, burnt out, or has nothing sharp in it', async () => {
    expect(measurePhoto(await bars(1, 0, 0.1)).say[0]).toMatch(/very dark/);
    expect(measurePhoto(await bars(1, 0, 1.4)).say[0]).toMatch(/burnt out/);
    expect(measurePhoto(await bars(14, 0)).say[0]).toMatch(/blurred/);
  });
});
