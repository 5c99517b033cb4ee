import sharp from 'sharp';
import { expect, test } from 'vitest';
import { trace } from '../../src/trace/index.ts';
import { long } from '../long.ts';
import { bridgedMask, drawStrip, type StripScene } from './creasedStrip.ts';

/** The strip as a phone keeps it: 5 px/mm, sharpened, JPEG with colour at half its resolution; squared to 10 px/mm. */
async function photographed(scene: StripScene) {
  const drawn = drawStrip(scene);
  const { width, height, rgb } = drawn.sheet;
  const jpeg = await sharp(rgb, { raw: { width, height, channels: 3 } })
    .resize(width / 2, height / 2)
    .sharpen({ sigma: 0.8 })
    .jpeg({ quality: 82, chromaSubsampling: '4:2:0' })
    .toBuffer();
  const back = await sharp(jpeg).resize(width, height, { kernel: 'cubic' }).raw().toBuffer();
  const sheet = { ...drawn.sheet, rgb: new Uint8Array(back), photoPxPerMm: 5 };
  const { crossings } = trace(bridgedMask(drawn), sheet);
  const [x, y] = drawn.gapAt;
  const near = crossings.filter(({ at }) => Math.hypot(at[0] - x, at[1] - y) < 3);
  return { told: near.some(({ gap }) => gap >= 0.3), crossings };
}

const count = long ? 60 : 16;

test('of cuts of 0.6 mm in a small photograph most are told, if only as a place to look at', async () => {
  let told = 0;
  for (let seed = 0; seed < count; seed++) {
    const seen = await photographed({ seed: 900 + seed, paper: 'white', gapMm: 0.6, blurPx: 1 });
    if (seen.told) told++;
  }
  expect(told).toBeGreaterThanOrEqual(0.8 * count);
});

test('by its lightness alone no cut is sure, and on few sound strips is one supposed', async () => {
  let supposed = 0;
  for (let seed = 0; seed < 2 * count; seed++) {
    const paper = seed % 2 ? 'kraft' : 'white';
    const { crossings } = await photographed({ seed: 7000 + seed, paper, gapMm: 0, blurPx: 1 });
    const fine = crossings.filter((each) => each.fine);
    expect(fine.every(({ gap }) => gap <= 0.5)).toBe(true);
    if (fine.length) supposed++;
  }
  expect(supposed).toBeLessThanOrEqual(0.05 * 2 * count);
});
