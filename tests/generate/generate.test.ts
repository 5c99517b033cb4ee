import { readFile } from 'node:fs/promises';
import { describe, expect, it } from 'vitest';
import { cardSchema } from '../../src/card/index.ts';
import { homographyFromQuad, applyHomography } from '../../src/sheet/index.ts';
import { cameraOver, cornersPx, project, unproject } from './camera.ts';
import { catalogue } from './catalogue.ts';
import { drawConditions } from './conditions.ts';
import { harbourNight } from './harbourNight.ts';
import { randomFrom } from './random.ts';
import { truthOf } from './truth.ts';

const fixture = (name: string) => readFile(new URL(`../../fixtures/${name}`, import.meta.url), 'utf8');

describe('The fixtures', () => {
  it.each(catalogue().map((e) => [e.name, e] as const))(
    '%s: truth and card are remade byte for byte from the seed',
    async (name, { build, conditions, seed }) => {
      const truth = truthOf(build, conditions, cameraOver(build.base, conditions), seed, `${name}.jpg`);
      expect(`${JSON.stringify(truth, null, 1)}\n`).toBe(await fixture(`${name}.json`));
      expect(`${JSON.stringify(build.card, null, 1)}\n`).toBe(await fixture(`${name}.card.json`));
    },
  );

  it('carry cards that a maker could load', () => {
    for (const { build } of catalogue()) expect(cardSchema.safeParse(build.card).success).toBe(true);
  });
});

describe('The camera', () => {
  const base = harbourNight().base;
  const conditions = drawConditions(randomFrom(5));

  // A plane seen by a pinhole camera is related to its picture by the homography of any four of its points
  // (Hartley and Zisserman, Multiple View Geometry, 2nd ed., section 2.3 and example 2.12; from memory for the numbers).
  it('sees the plane by the homography of its four corners when the lens is straight', () => {
    const camera = cameraOver(base, { ...conditions, k1: 0 });
    const size = { width: base.width_mm, height: base.height_mm };
    const byCorners = homographyFromQuad(cornersPx(camera, base), size);
    for (const p of [
      [10, 20],
      [52.5, 74],
      [100, 140],
    ] as const) {
      const [x, y] = project(camera, p);
      const [u, v] = applyHomography(byCorners, p);
      expect(Math.hypot(x - u, y - v)).toBeLessThan(1e-6);
    }
  });

  it('keeps the copper side up: corners go round clockwise in the picture', () => {
    for (let seed = 0; seed < 40; seed++) {
      const corners = cornersPx(cameraOver(base, drawConditions(randomFrom(seed))), base);
      const area = corners.reduce((sum, [x, y], i) => {
        const [u, v] = corners[(i + 1) % 4];
        return sum + x * v - u * y;
      }, 0);
      expect(area).toBeGreaterThan(0);
    }
  });

  it('takes a px back to the mm it came from, lens included', () => {
    const camera = cameraOver(base, { ...conditions, k1: -0.02 });
    const [x, y] = project(camera, [30, 40]);
    const [u, v] = unproject(camera, x, y);
    expect(Math.hypot(u - 30, v - 40)).toBeLessThan(1e-3);
  });
});
