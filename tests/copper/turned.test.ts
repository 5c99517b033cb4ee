import { expect, test } from 'vitest';
import type { RgbPicture } from '../../src/engine/planes.ts';
import { turned, turnedBack, turns } from '../../src/copper/learned/turned.ts';

/** 3 x 2 pixels; each channel tells pixel and channel. */
const picture = { width: 3, height: 2, rgb: Uint8Array.from({ length: 18 }, (_, k) => k) };
const first = ({ rgb, width, height }: RgbPicture) =>
  Array.from({ length: width * height }, (_, k) => rgb[3 * k] / 3);

test('a picture is laid in four ways', () => {
  expect(turns.map((t) => first(turned(picture, t)))).toEqual([
    [0, 1, 2, 3, 4, 5],
    [0, 3, 1, 4, 2, 5],
    [5, 4, 3, 2, 1, 0],
    [5, 2, 4, 1, 3, 0],
  ]);
  expect(turned(picture, 'sideways')).toMatchObject({ width: 2, height: 3 });
});

test('a map of it is laid back to the same place', () => {
  for (const turn of turns) {
    const map = Uint8Array.from(first(turned(picture, turn)));
    expect([...turnedBack(map, picture, turn)]).toEqual([0, 1, 2, 3, 4, 5]);
  }
});
