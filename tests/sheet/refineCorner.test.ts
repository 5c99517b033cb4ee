import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import type { Photo } from '../../src/photo/index.ts';
import { refineCorner } from '../../src/sheet/index.ts';
import { randomFrom } from '../generate/random.ts';

/** A pale sheet on a darker table, its corner at a known sub-pixel place; drawn at 8 times the size, then reduced. */
async function corner(at: [number, number], turn: number): Promise<Photo> {
  const size = 80;
  const times = 8;
  const side = size * times;
  const big = Buffer.alloc(side * side);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++) {
      const u = (x + 0.5) / times - at[0];
      const v = (y + 0.5) / times - at[1];
      big[y * side + x] = c * u + s * v > 0 && -s * u + c * v > 0 ? 215 : 90;
    }
  const small = await sharp(big, { raw: { width: side, height: side, channels: 1 } })
    .resize(size, size, { kernel: 'linear' })
    .extractChannel(0)
    .raw()
    .toBuffer();
  const r = randomFrom(9);
  const rgba = new Uint8Array(size * size * 4).fill(255);
  for (let i = 0; i < size * size; i++) rgba.fill(small[i] + 2 * r.normal(), 4 * i, 4 * i + 3);
  return { name: 'corner', width: size, height: size, rgba };
}

describe('refineCorner', () => {
  it.each([0.1, 0.5, 0.9, 1.3])(
    'snaps to the corner to a quarter pixel from 6 px away (turned by %f rad)',
    async (turn) => {
      const photo = await corner([40.3, 38.7], turn);
      const [x, y] = refineCorner(photo, [44.5, 34.5]);
      expect(Math.hypot(x - 40.3, y - 38.7)).toBeLessThan(0.25);
    },
  );

  it('leaves a place alone that has no corner, or only an edge', async () => {
    const photo = await corner([200, 200], 0);
    expect(refineCorner(photo, [40, 40])).toEqual([40, 40]);
    const edge = await corner([40, -300], 0);
    expect(refineCorner(edge, [41, 40])).toEqual([41, 40]);
  });
});
