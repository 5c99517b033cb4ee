import { middleOf } from '../../geometry/index.ts';
import { bandAlong } from '../cuts/band.ts';
import { mouthsOf } from '../cuts/mouths.ts';
import { windowAt, type Window } from '../cuts/window.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import type { CopperMask } from '../types.ts';
import type { Across } from './lines.ts';
import type { Patch } from './patch.ts';

/** What the picture says for an opening along a line, and how broad it is. */
export interface Evidence {
  /** How far it looks like the paper beside the strip while its flanks do not; -4 to 4. */
  paper: number;
  /** How far it differs from both flanks in the same way all along; 0 to 4. */
  ridge: number;
  /** How much lower the odds of copper are on it than round it, log; 0 to 3. */
  doubt: number;
  /** Half its breadth to both sides of the line, px. */
  before: number;
  behind: number;
}

/** Rows of a window to both sides of a line, a tenth of a millimetre each. */
const reach = 16;
/** Units of L*, a*, b* that tell two colours apart. */
const usual = [4, 3, 3] as const;
/** Half breadths of a line that is looked at and the rows at which its flanks are, rows. */
const sizes = [
  { inner: [0], flank: 4 },
  { inner: [-1, 0, 1], flank: 6 },
  { inner: [-3, 0, 3], flank: 9 },
  { inner: [-6, -3, 0, 3, 6], flank: 13 },
];
const [mostRidge, mostDoubt] = [4, 3];
const ofBroader = 1.2;
/** A line that is less plain than this is opened no broader than so many rows to each side. */
const plainFrom = 2;
const thin = 2;

export function evidenceOn(line: Across, patch: Patch, mask: CopperMask, sheet: SquaredSheet): Evidence {
  const unit = mask.pxPerMm / 10;
  const place = {
    x: patch.i0 + (line.from[0] + line.to[0]) / 2,
    y: patch.j0 + (line.from[1] + line.to[1]) / 2,
    along: line.normal,
    across: line.way,
    half: Math.max(5 * unit, line.length / 2),
  };
  const window = windowAt(place, reach, mask, sheet, unit);
  const band = bandAlong(window, mouthsOf(window), 0, 0);
  const { ridge, size } = ridgeOn(window);
  const paper = band ? band.score / 2 : 0;
  const doubt = doubtOn(window);
  if (Math.max(paper, ridge) < plainFrom)
    return { paper, ridge, doubt, before: thin * unit, behind: thin * unit };
  const least = paper > ridge && band ? band.half : Math.max(1.5, size);
  const [before, behind] = [-1, 1].map((sign) => unit * breadth(window, sign as 1 | -1, least));
  return { paper, ridge, doubt, before, behind };
}

/** How steadily a line differs from both its flanks, and half its breadth in rows. */
function ridgeOn({ columns, from, to, L, a, b }: Window): { ridge: number; size: number } {
  const count = to - from;
  let best = { ridge: 0, size: 1.5 };
  const at = (plane: Float32Array, row: number, t: number): number =>
    plane[(reach + row) * columns.length + t];
  for (const { inner, flank } of sizes) {
    let squared = 0;
    [L, a, b].forEach((plane, c) => {
      const offs = Float64Array.from({ length: count }, (_, n) => {
        const t = from + n;
        const own = inner.reduce((sum, row) => sum + at(plane, row, t), 0) / inner.length;
        const [one, other] = [own - at(plane, -flank, t), own - at(plane, flank, t)];
        // On the slope between two shades a line lies between its flanks: it is none then.
        return (one * other > 0 ? (Math.abs(one) < Math.abs(other) ? one : other) : 0) / usual[c];
      });
      const mean = offs.reduce((sum, v) => sum + v, 0) / count;
      const scatter = Math.sqrt(offs.reduce((sum, v) => sum + (v - mean) ** 2, 0) / count);
      squared += (mean / (0.5 + 0.5 * scatter)) ** 2;
    });
    const ridge = Math.min(mostRidge, Math.sqrt(squared));
    // Of two that are as plain the narrower one is believed.
    if (ridge > ofBroader * best.ridge) best = { ridge, size: inner[inner.length - 1] + 0.5 };
  }
  return best;
}

function doubtOn({ columns, from, to, chance, rows }: Window): number {
  const odds = (v: number): number => Math.log((v + 1) / (256 - v));
  const on: number[] = [];
  const all: number[] = [];
  for (let t = from; t < to; t++) {
    on.push(chance[reach * columns.length + t]);
    for (let row = 0; row < rows; row += 4) all.push(chance[row * columns.length + t]);
  }
  const doubt = odds(middleOf(Float32Array.from(all))) - odds(middleOf(Float32Array.from(on)));
  return Math.max(0, Math.min(mostDoubt, doubt));
}

/** Rows to one side of a line that look like it: most of their columns are nearer to it than to the flank. */
function breadth({ columns, from, to, L, a, b }: Window, sign: 1 | -1, least: number): number {
  const count = to - from;
  const apart = (row: number, other: number, t: number): number => {
    const [k, m] = [(reach + row) * columns.length + t, (reach + other) * columns.length + t];
    return Math.hypot((L[k] - L[m]) / usual[0], (a[k] - a[m]) / usual[1], (b[k] - b[m]) / usual[2]);
  };
  let rows = Math.round(least);
  for (let row = rows + 1; row <= reach - 4; row++) {
    let alike = 0;
    for (let t = from; t < to; t++) {
      const own = apart(sign * row, 0, t);
      if (own < 1.5 && own < apart(sign * row, sign * (row + 4), t)) alike++;
    }
    if (alike < 0.6 * count) break;
    rows = row;
  }
  return rows + 0.5;
}
