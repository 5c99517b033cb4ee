import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { Point, Quad } from '../../src/geometry/index.ts';
import { insideRing } from '../../src/geometry/insideRing.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';
import { baseMap } from '../../src/sheet/learned/index.ts';

/** Photographs that tests/generate drew, by other code than the scenes that the net was trained on. */
it.each(['sound', 'half-laid'])('the base of %s is where the map says: IoU over 0.95', async (name) => {
  const folder = new URL('../../fixtures/', import.meta.url);
  const { base } = JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8')) as {
    base: { corners_px: Quad };
  };
  const photo = await decodePhoto(readFileSync(new URL(`${name}.jpg`, folder)), name);
  const { width, height, prob } = await baseMap(photo);
  expect(Math.max(width, height)).toBe(256);
  let both = 0;
  let either = 0;
  prob.forEach((p, k) => {
    const at: Point = [
      (((k % width) + 0.5) * photo.width) / width,
      ((Math.floor(k / width) + 0.5) * photo.height) / height,
    ];
    const inside = insideRing(at, base.corners_px);
    both += inside && p > 0.5 ? 1 : 0;
    either += inside || p > 0.5 ? 1 : 0;
  });
  expect(both / either).toBeGreaterThan(0.95);
});
