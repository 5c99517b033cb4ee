import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { cardSchema } from '../../src/card/index.ts';
import { check } from '../../src/check/index.ts';
import type { Checked } from '../../src/check/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import { long } from '../long.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';
import type { Photo } from '../../src/photo/index.ts';
import { applyHomography } from '../../src/sheet/index.ts';

const fixture = (name: string) => fileURLToPath(new URL(`../../fixtures/${name}`, import.meta.url));

async function open(name: string) {
  const photo = await decodePhoto(fixture(`${name}.jpg`));
  const card = cardSchema.parse(JSON.parse(await readFile(fixture(`${name}.card.json`), 'utf8')));
  return { photo, card };
}

/** The photograph with a round burnt-out spot, as a lamp mirrored in tape leaves it. */
function burnt(photo: Photo, { sheet }: Checked, at: Point, radiusPx = 38): Photo {
  const rgba = photo.rgba.slice();
  const [u, v] = applyHomography(sheet.toPhoto, at);
  for (let j = Math.floor(v - radiusPx); j <= v + radiusPx; j++) {
    for (let i = Math.floor(u - radiusPx); i <= u + radiusPx; i++) {
      if (Math.hypot(i - u, j - v) < radiusPx)
        rgba.fill(255, 4 * (j * photo.width + i), 4 * (j * photo.width + i) + 3);
    }
  }
  return { ...photo, rgba };
}

const gapNear = ({ netlist }: Checked, [x, y]: Point) =>
  netlist.findings.some(({ kind, at }) => kind === 'gap' && Math.hypot(at[0] - x, at[1] - y) < 6);

test('glare over a strip goes with a second shot; a true gap beside it stays', async () => {
  const { photo, card } = await open('gap-1.2');
  const clean = await check(photo, card, { learned: false });
  const spot: Point = [68, 60];
  const [one, two] = [burnt(photo, clean, spot), burnt(photo, clean, [20, 60])];
  const known = { ...card, corners_px: [...clean.outline.cornersPx] as typeof card.corners_px };
  const alone = await check(one, known, { learned: false });
  expect([gapNear(clean, spot), gapNear(alone, spot)]).toEqual([false, true]);
  const both = await check(one, known, { learned: false }, [two]);
  expect(both.shots).toMatchObject([{ used: true }]);
  expect([gapNear(both, spot), gapNear(both, [44, 72])]).toEqual([false, true]);
}, 120_000);

test.runIf(long)(
  'a photograph of another sheet is left out, with the reason',
  async () => {
    const { photo, card } = await open('gap-1.2');
    const grey = new Uint8Array(photo.rgba.length).fill(128);
    const { shots } = await check(photo, card, { learned: false }, [
      { ...photo, name: 'grey.jpg', rgba: grey },
    ]);
    expect(shots).toMatchObject([{ name: 'grey.jpg', used: false, why: 'outline' }]);
  },
  120_000,
);
