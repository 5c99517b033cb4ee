import { describe, expect, it } from 'vitest';
import type { Quad } from '../../src/geometry/index.ts';
import { askew } from '../../src/sheet/outline/askew.ts';
import { findEdges } from '../../src/sheet/outline/edges.ts';
import { innerBorder } from '../../src/sheet/outline/innerBorder.ts';
import type { WorkPicture } from '../../src/sheet/outline/work.ts';

const base = { width: 105, height: 148 };
const pxPerMm = 3;

/** A picture, nine samples a pixel, by its lightness and tint at each place, mm from the sheet's corner; the sheet lies 10 mm in. */
function picture(
  at: (x: number, y: number) => [number, number, number],
  width = 125,
  height = 168,
): WorkPicture {
  const size = { width: width * pxPerMm, height: height * pxPerMm };
  const planes = [0, 1, 2].map(() => new Float32Array(size.width * size.height));
  const place = (k: number, n: number) => (k + (n + 0.5) / 3) / pxPerMm - 10;
  for (let j = 0; j < size.height; j++)
    for (let i = 0; i < size.width; i++)
      for (let n = 0; n < 9; n++)
        at(place(i, n % 3), place(j, Math.floor(n / 3))).forEach((v, c) => {
          planes[c][j * size.width + i] += v / 9;
        });
  return { ...size, step: 1, planes: planes as unknown as WorkPicture['planes'] };
}

const figure: Quad = [
  [30, 30],
  [345, 30],
  [345, 474],
  [30, 474],
];

/** Whether a place lies within a rectangle of its shape so far in from the sheet's sides, turned by some degrees about its middle. */
function within(x: number, y: number, inset: number, degrees = 0): boolean {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const [u, v] = [x - base.width / 2, y - base.height / 2];
  return (
    Math.abs(c * u + s * v) < base.width / 2 - inset &&
    Math.abs(-s * u + c * v) < base.height / 2 - (inset * base.height) / base.width
  );
}

const table: [number, number, number] = [60, 20, -30];
const tape: [number, number, number] = [70, 25, -20];
/** Two rails along the long sides of a base that lies so far in. */
const rails = (x: number, y: number, inset: number, degrees = 0) =>
  within(x, y, inset + 6, degrees) && !within(x, y, inset + 11, degrees);

describe('innerBorder', () => {
  it('sees a base that lies on a larger sheet, a little turned', () => {
    const seen = innerBorder(
      picture((x, y) => {
        if (rails(x, y, 12, 1.5)) return tape;
        if (within(x, y, 12, 1.5)) return [200, 0, 0];
        return within(x, y, 0) ? [190, 2, -3] : table;
      }),
      figure,
      base,
    );
    expect(seen).toBeGreaterThan(0.6);
  });

  it('sees none on the base itself, whose first line inwards is tape, nor on a blank one', () => {
    const sheet = picture((x, y) => (rails(x, y, 0) ? tape : within(x, y, 0) ? [200, 0, 0] : table));
    expect(innerBorder(sheet, figure, base)).toBe(0);
    const blank = picture((x, y) => (within(x, y, 0) ? [200, 0, 0] : table));
    expect(innerBorder(blank, figure, base)).toBe(0);
  });

  it('takes a fold along one side for no base', () => {
    const folded = picture((x, y) => (within(x, y, 0) ? (x > 90 ? [185, 0, 0] : [200, 0, 0]) : table));
    expect(innerBorder(folded, figure, base)).toBe(0);
  });
});

describe('askew', () => {
  const strips = (degrees: number) =>
    findEdges(picture((x, y) => (rails(x, y, 20, degrees) ? tape : [200, 0, 0])));

  it('tells strips along the sides from those of a base that lies turned on the figure', () => {
    expect(askew(strips(0), figure, base).against).toBeLessThan(0.1);
    expect(askew(strips(1.5), figure, base).against).toBeLessThan(0.2);
    expect(askew(strips(15), figure, base).against).toBeGreaterThan(0.85);
  });

  it('says nothing where there is nothing', () => {
    expect(askew(findEdges(picture(() => [200, 0, 0])), figure, base)).toEqual({ against: 0.3, of: 0 });
  });
});
