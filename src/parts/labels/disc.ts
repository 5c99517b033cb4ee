import type { Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';

/** The circle of a cell's face, mm on the sheet. */
export interface Disc {
  at: Point;
  diameterMm: number;
}

/** A picture of lettering with ink dark on white, to be looked for lines of text. */
export type Face = Pick<SquaredSheet, 'width' | 'height' | 'pxPerMm' | 'originMm' | 'rgb'> & {
  /** 1 where the face does not reach. */
  beyond: Uint8Array;
  /** Where a place of this picture, mm, lies on the sheet. */
  toSheet: (at: Point) => Point;
};

/** Finer than the sheet, so that a letter of a millimetre and a half keeps its strokes when turned, px per mm. */
const pxPerMm = 16;
/** Lettering keeps clear of the rim's bevel: shares of the radius. */
const reach = 0.88;
const band = { from: 0.5, to: 0.96 };

/** A cell's face turned clockwise by so many degrees. */
export function turnedFace(grey: Grey, { at, diameterMm }: Disc, turnDeg: number): Face {
  const half = (reach * diameterMm) / 2;
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  const toSheet = ([x, y]: Point): Point => [at[0] + x * cos + y * sin, at[1] - x * sin + y * cos];
  return pictured(grey, [-half, -half], 2 * half, 2 * half, toSheet, ([x, y]) => x * x + y * y > half * half);
}

/** The ring of a cell's face under its rim, unrolled from the top clockwise; a third of it comes twice. */
export function unrolledFace(grey: Grey, { at, diameterMm }: Disc, inward: boolean): Face {
  const radius = diameterMm / 2;
  const middle = radius * ((band.from + band.to) / 2);
  const around = 2 * Math.PI * middle;
  const tall = radius * (band.to - band.from);
  const toSheet = ([x, y]: Point): Point => {
    const angle = (inward ? -x : x) / middle;
    const r = inward ? radius * band.from + y : radius * band.to - y;
    return [at[0] + r * Math.sin(angle), at[1] - r * Math.cos(angle)];
  };
  return pictured(grey, [0, 0], around * (4 / 3), tall, toSheet, () => false);
}

/** A sheet's grey, row-major, as `greyOf` gives it. */
export interface Grey extends Pick<SquaredSheet, 'width' | 'height' | 'pxPerMm' | 'originMm'> {
  grey: Uint8Array;
}

function pictured(
  grey: Grey,
  originMm: Point,
  wideMm: number,
  tallMm: number,
  toSheet: (at: Point) => Point,
  isBeyond: (at: Point) => boolean,
): Face {
  const [width, height] = [Math.round(wideMm * pxPerMm), Math.round(tallMm * pxPerMm)];
  const values = new Float32Array(width * height);
  const beyond = new Uint8Array(width * height);
  for (let j = 0, k = 0; j < height; j++)
    for (let i = 0; i < width; i++, k++) {
      const at: Point = [originMm[0] + (i + 0.5) / pxPerMm, originMm[1] + (j + 0.5) / pxPerMm];
      if (isBeyond(at)) beyond[k] = 1;
      values[k] = greyAt(grey, toSheet(at));
    }
  const rgb = new Uint8Array(3 * width * height);
  flattened(values, beyond, width, height).forEach((value, k) => rgb.fill(value, 3 * k, 3 * k + 3));
  return { width, height, pxPerMm, originMm, rgb, beyond, toSheet };
}

/** Between the four nearest pixels; the sheet's rim goes on beyond it. */
function greyAt({ grey, width, height, pxPerMm: k, originMm }: Grey, [x, y]: Point): number {
  const u = Math.min(Math.max((x - originMm[0]) * k - 0.5, 0), width - 1.001);
  const v = Math.min(Math.max((y - originMm[1]) * k - 0.5, 0), height - 1.001);
  const [i, j] = [Math.floor(u), Math.floor(v)];
  const [fu, fv] = [u - i, v - j];
  const at = j * width + i;
  const above = grey[at] * (1 - fu) + grey[at + 1] * fu;
  const below = grey[at + width] * (1 - fu) + grey[at + width + 1] * fu;
  return above * (1 - fv) + below * fv;
}

/** The metal's sheen goes over millimetres; lettering is darker than the metal within this reach, mm. */
const sheenMm = 1.6;
/** So much darker is ink at its fullest; less is stretched to it where nothing on the face is so dark. */
const fullInk = { most: 0.5, least: 0.12 };

/** A metal face with its sheen taken out: 255 plain, darker where it is darker than what lies round it. Of pressed letters that is one flank. */
function flattened(values: Float32Array, beyond: Uint8Array, width: number, height: number): Uint8Array {
  const mean = localMean(values, beyond, width, height, Math.round(sheenMm * pxPerMm));
  const ink = values.map((value, k) => (beyond[k] ? 0 : Math.max(0, 1 - value / Math.max(1, mean[k]))));
  const sorted = Float32Array.from(ink.filter((_, k) => !beyond[k])).sort();
  const dark = sorted[Math.floor(sorted.length * 0.98)] ?? fullInk.most;
  const full = Math.min(fullInk.most, Math.max(fullInk.least, dark));
  return Uint8Array.from(ink, (share) => 255 - 225 * Math.min(1, share / full));
}

/** Mean over a square of twice the reach, of what is not beyond, by a summed-area table (Crow 1984). */
function localMean(
  values: Float32Array,
  beyond: Uint8Array,
  width: number,
  height: number,
  far: number,
): Float32Array {
  const stride = width + 1;
  const sums = new Float64Array(stride * (height + 1));
  const counts = new Float64Array(stride * (height + 1));
  for (let j = 0, k = 0; j < height; j++)
    for (let i = 0, [sum, count] = [0, 0]; i < width; i++, k++) {
      if (!beyond[k]) [sum, count] = [sum + values[k], count + 1];
      const at = (j + 1) * stride + i + 1;
      sums[at] = sums[at - stride] + sum;
      counts[at] = counts[at - stride] + count;
    }
  return values.map((value, k) => {
    const [i, j] = [k % width, Math.floor(k / width)];
    const [x0, x1] = [Math.max(0, i - far), Math.min(width, i + far + 1)];
    const [y0, y1] = [Math.max(0, j - far) * stride, Math.min(height, j + far + 1) * stride];
    const over = (table: Float64Array) => table[y1 + x1] - table[y0 + x1] - table[y1 + x0] + table[y0 + x0];
    return over(counts) > 0 ? over(sums) / over(counts) : value;
  });
}
