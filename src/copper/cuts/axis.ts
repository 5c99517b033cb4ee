import type { Point } from '../../geometry/index.ts';
import { closeSquare } from '../closeSquare.ts';
import { squaredDistance } from '../distance.ts';
import type { CopperMask } from '../types.ts';

/** A place in the middle of a strip. */
export interface AxisPlace {
  /** px of the sheet. */
  x: number;
  y: number;
  /** Unit vectors along the strip and across it. */
  along: Point;
  across: Point;
  /** Half the strip's width, px. */
  half: number;
}

/** The axis is looked for at about this scale. */
const coarsePxPerMm = 5;
/** Half the widest opening over which a strip runs on, mm: one that the mask opens in part, or opens and closes again. */
const overMm = 0.6;
/** Tape, mm. */
const narrowestMm = 2;
const widestMm = 11;
/** One place on about so much of a strip's length, mm. */
export const apartMm = 0.8;
/** Directions in which the shortest way across is looked for. */
const directions = 16;

/** Places all along the strips of a mask, with the way that each strip runs there: the shortest chord lies across it. */
export function axisPlaces(mask: CopperMask): AxisPlace[] {
  const shrink = Math.max(1, Math.round(mask.pxPerMm / coarsePxPerMm));
  const coarse = shrunk(mask, shrink);
  const pxPerMm = mask.pxPerMm / shrink;
  const { width, height } = coarse;
  const closed = closeSquare(coarse.copper, width, height, Math.round(overMm * pxPerMm));
  const cell = apartMm * pxPerMm;
  const columns = Math.ceil(width / cell);
  const cellAt = (x: number, y: number): number => Math.floor(y / cell) * columns + Math.floor(x / cell);
  const cells = columns * Math.ceil(height / cell);
  const asked = new Uint8Array(cells);
  const taken = new Uint8Array(cells);
  const found: AxisPlace[] = [];
  for (const k of ridge(closed, width, height, (narrowestMm / 2) * pxPerMm)) {
    const [i, j] = [k % width, Math.floor(k / width)];
    const about = cellAt(i, j);
    if (asked[about]) continue;
    asked[about] = 1;
    const chord = shortestChord(closed, width, height, i, j, widestMm * pxPerMm);
    if (!chord) continue;
    const { x, y } = chord;
    const at = cellAt(x, y);
    if (taken[at]) continue;
    taken[at] = 1;
    const [vx, vy] = chord.across;
    found.push({
      x: x * shrink,
      y: y * shrink,
      across: [vx, vy],
      along: [vy, -vx],
      half: (chord.length / 2) * shrink,
    });
  }
  return found;
}

/** The mask at a coarser scale: copper where half of a cell is. */
function shrunk({ filled, width, height }: CopperMask, shrink: number) {
  const w = Math.floor(width / shrink);
  const h = Math.floor(height / shrink);
  const copper = new Uint8Array(w * h);
  const most = (shrink * shrink) / 2;
  for (let j = 0, n = 0; j < h; j++) {
    for (let i = 0; i < w; i++, n++) {
      let sum = 0;
      for (let v = 0, k = j * shrink * width + i * shrink; v < shrink; v++, k += width)
        for (let u = 0; u < shrink; u++) sum += filled[k + u];
      copper[n] = sum >= most ? 1 : 0;
    }
  }
  return { copper, width: w, height: h };
}

/** Off the axis the distance to the border grows by one a pixel towards it, on it by little. */
const leastGrowth = 0.6;

/** Pixels about as far from the border as any beside them, at least `least` px from it, in the order of the picture. */
function ridge(copper: Uint8Array, width: number, height: number, least: number): number[] {
  const open = new Uint8Array(copper.length);
  for (let k = 0; k < open.length; k++) open[k] = 1 - copper[k];
  const squared = squaredDistance(open, width, height);
  const found: number[] = [];
  for (let k = width; k < squared.length - width; k++) {
    if (squared[k] < least * least) continue;
    const more = (Math.sqrt(squared[k]) + leastGrowth) ** 2;
    const highest = Math.max(squared[k - 1], squared[k + 1], squared[k - width], squared[k + width]);
    if (highest < more) found.push(k);
  }
  return found;
}

interface Chord {
  x: number;
  y: number;
  across: Point;
  length: number;
}

const ways = Array.from({ length: directions }, (_, n): Point => {
  const angle = (n * Math.PI) / directions;
  return [Math.cos(angle), Math.sin(angle)];
});

function shortestChord(
  copper: Uint8Array,
  width: number,
  height: number,
  i: number,
  j: number,
  longest: number,
): Chord | undefined {
  let best: Chord | undefined;
  let least = longest;
  for (const across of ways) {
    const on = reach(copper, width, height, i, j, across[0], across[1], least);
    const back = reach(copper, width, height, i, j, -across[0], -across[1], least - on);
    const length = on + back;
    if (length >= least) continue;
    least = length;
    const middle = (on - back) / 2;
    best = { x: i + 0.5 + middle * across[0], y: j + 0.5 + middle * across[1], across, length };
  }
  return best;
}

/** Steps of half a pixel to the border, px; no farther than `most`. */
function reach(
  copper: Uint8Array,
  width: number,
  height: number,
  i: number,
  j: number,
  dx: number,
  dy: number,
  most: number,
): number {
  for (let t = 0.5; t < most; t += 0.5) {
    const [u, v] = [Math.floor(i + 0.5 + t * dx), Math.floor(j + 0.5 + t * dy)];
    if (u < 0 || v < 0 || u >= width || v >= height || !copper[v * width + u]) return t - 0.25;
  }
  return most;
}
