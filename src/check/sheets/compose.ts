import type { Card } from '../../card/index.ts';
import type { CopperMask } from '../../copper/index.ts';
import { insideRing, type Point } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { closeFold } from './closeFold.ts';
import { apply, inverse } from './rigid.ts';
import type { ReadSheet, Registration } from './types.ts';

/** Paper that a picture does not show is drawn in this grey. */
const unseenGrey = 236;
/** Beyond the flaps' outlines, mm. */
const roundMm = 1;

/** A picture with its copper. */
export interface Seen {
  sheet: SquaredSheet;
  seen: CopperMask;
}

/** A further sheet with its place on the base. */
export interface Laid {
  read: ReadSheet;
  registration: Registration;
}

/**
 * One picture and one mask of the base and of all flaps opened flat beside it, in the base's frame.
 * @param laid the further sheets that show flaps
 */
export function compose({ sheet, seen }: Seen, laid: readonly Laid[], card: Card): Seen {
  const made = widened(sheet, seen, card);
  for (const each of laid) {
    const flap = card.flaps.find(({ id }) => id === (each.read.given.fold_of ?? each.read.given.sheet));
    if (!flap) continue;
    layOver(made, each, (p) => insideRing(p, flap.outline), flap.outline);
    closeFold(made.seen, flap);
  }
  return made;
}

/** The base's picture and mask, wide enough for every flap. */
function widened(sheet: SquaredSheet, seen: CopperMask, card: Card): Seen {
  const { pxPerMm, originMm } = sheet;
  const outlines = card.flaps.flatMap(({ outline }) => outline);
  const more = (far: number) => Math.max(0, Math.ceil((far + (far > 0 ? roundMm : 0)) * pxPerMm));
  const end: Point = [originMm[0] + sheet.width / pxPerMm, originMm[1] + sheet.height / pxPerMm];
  const left = more(Math.max(0, ...outlines.map(([x]) => originMm[0] - x)));
  const top = more(Math.max(0, ...outlines.map(([, y]) => originMm[1] - y)));
  const right = more(Math.max(0, ...outlines.map(([x]) => x - end[0])));
  const bottom = more(Math.max(0, ...outlines.map(([, y]) => y - end[1])));
  const width = sheet.width + left + right;
  const height = sheet.height + top + bottom;
  const frame = {
    width,
    height,
    originMm: [originMm[0] - left / pxPerMm, originMm[1] - top / pxPerMm] as const,
  };
  const grown = <T extends Uint8Array>(of: T, per: number, fill: number) => {
    const out = new Uint8Array(width * height * per).fill(fill);
    for (let j = 0; j < sheet.height; j++) {
      const row = of.subarray(j * sheet.width * per, (j + 1) * sheet.width * per);
      out.set(row, ((j + top) * width + left) * per);
    }
    return out;
  };
  return {
    sheet: { ...sheet, ...frame, rgb: grown(sheet.rgb, 3, unseenGrey), seen: undefined },
    seen: {
      ...seen,
      ...frame,
      filled: grown(seen.filled, 1, 0),
      strict: grown(seen.strict, 1, 0),
      likelihood: grown(seen.likelihood, 1, 0),
      lamp: seen.lamp && grown(seen.lamp, 1, 0),
    },
  };
}

/** Draws what a further sheet shows within a region over the picture and the mask. */
function layOver(
  made: Seen,
  { read, registration }: Laid,
  within: (p: Point) => boolean,
  outline: readonly Point[],
): void {
  const { width, height, pxPerMm, originMm, rgb } = made.sheet;
  const toOwn = inverse(registration.toBase);
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const i0 = Math.max(0, Math.floor((Math.min(...xs) - originMm[0]) * pxPerMm));
  const i1 = Math.min(width, Math.ceil((Math.max(...xs) - originMm[0]) * pxPerMm));
  const j0 = Math.max(0, Math.floor((Math.min(...ys) - originMm[1]) * pxPerMm));
  const j1 = Math.min(height, Math.ceil((Math.max(...ys) - originMm[1]) * pxPerMm));
  for (let j = j0; j < j1; j++) {
    for (let i = i0; i < i1; i++) {
      const p: Point = [originMm[0] + (i + 0.5) / pxPerMm, originMm[1] + (j + 0.5) / pxPerMm];
      if (!within(p)) continue;
      const k = j * width + i;
      const own = apply(toOwn, p);
      const from = pixelOf(read.sheet, own);
      made.seen.filled[k] = from < 0 ? 0 : read.seen.filled[from];
      made.seen.strict[k] = from < 0 ? 0 : read.seen.strict[from];
      made.seen.likelihood[k] = from < 0 ? 0 : read.seen.likelihood[from];
      if (made.seen.lamp) made.seen.lamp[k] = read.seen.lamp?.[from] ?? 0;
      colourAt(read.sheet, own, rgb, 3 * k);
    }
  }
}

function pixelOf({ width, height, pxPerMm, originMm }: SquaredSheet, [x, y]: Point): number {
  const i = Math.floor((x - originMm[0]) * pxPerMm);
  const j = Math.floor((y - originMm[1]) * pxPerMm);
  return i < 0 || j < 0 || i >= width || j >= height ? -1 : j * width + i;
}

/** Colour at a place, bilinear; the nearest within the picture beyond its edge. */
function colourAt(
  { width, height, pxPerMm, originMm, rgb }: SquaredSheet,
  [x, y]: Point,
  out: Uint8Array,
  to: number,
): void {
  const u = Math.min(width - 1, Math.max(0, (x - originMm[0]) * pxPerMm - 0.5));
  const v = Math.min(height - 1, Math.max(0, (y - originMm[1]) * pxPerMm - 0.5));
  const [i, j] = [Math.min(width - 2, Math.floor(u)), Math.min(height - 2, Math.floor(v))];
  const [a, b] = [u - i, v - j];
  const k = 3 * (j * width + i);
  for (let c = 0; c < 3; c++) {
    const top = rgb[k + c] * (1 - a) + rgb[k + 3 + c] * a;
    const bottom = rgb[k + 3 * width + c] * (1 - a) + rgb[k + 3 * width + 3 + c] * a;
    out[to + c] = Math.round(top * (1 - b) + bottom * b);
  }
}
