import { middleOf } from '../../geometry/index.ts';
import { uneven, unlike, type Band } from './band.ts';
import { chroma, lighter, lineAt, off, type Line } from './line.ts';
import { paperAbout, type Mouths } from './mouths.ts';
import { rowOf, type Window } from './window.ts';

/** How far a band goes: along the strip, and out of it at its sides. */
export interface Extent {
  /** Rows before and behind its middle that are paper: the median over its columns. */
  before: number;
  behind: number;
  /** Of its two ends, how many open onto plain paper. */
  ends: number;
}

/** Rows beyond its certain half that a band is followed, most. */
const farthest = 3;
/** Columns beyond a band's end of which half must look like paper; the last of its own must too. */
const beyond = 3;

export function extentOf(window: Window, mouths: Mouths, { row, slope, half }: Band): Extent {
  const line = lineAt(window, mouths, row, slope);
  if (!line) return { before: half, behind: half, ends: 0 };
  const { columns, from, to, copper } = window;
  const count = to - from;
  const isPaper = (n: number, shift: number): boolean => {
    const k = (rowOf(window, row, slope, from + n) + shift) * columns.length + from + n;
    return !copper[k] || off(window, k, n, line) < unlike;
  };
  const rowsTo = (way: 1 | -1): number => {
    const rows = Float32Array.from({ length: count }, (_, n) => {
      let s = 1;
      while (s <= half + farthest && isPaper(n, way * s)) s++;
      return s - 0.5;
    });
    return Math.max(half, middleOf(rows));
  };
  const opens = (side: 0 | 1): boolean => {
    const last = side ? count - 1 : 0;
    return uneven.some((shift) => isPaper(last, shift)) && isPlain(window, line, side);
  };
  return {
    before: rowsTo(-1),
    behind: rowsTo(1),
    ends: ([0, 1] as const).filter(opens).length,
  };
}

/** Light in which paper beyond a band's end may lie, as against the paper all along the strip; as cube roots. */
const leastLight = 0.85;
const mostLight = 1.08;

/** Whether what lies beyond a band's end is the paper that lies all along the strip: a wire or a pencil's line goes on there. */
function isPlain(window: Window, { row, slope }: Pick<Line, 'row' | 'slope'>, side: 0 | 1): boolean {
  const paper = paperAbout(window, window.reach, side, window.reach);
  if (!paper) return true;
  const { columns, from, to, L, a, b, copper } = window;
  const spread = Math.max(lighter, paper.spread);
  let [plain, seen] = [0, 0];
  for (let n = 0; n < beyond; n++) {
    const t = side ? to + n : from - 1 - n;
    const k = rowOf(window, row, slope, t) * columns.length + t;
    if (copper[k]) break;
    seen++;
    const whole = paper.L + 16;
    const light = Math.max(leastLight, Math.min(mostLight, (L[k] + 16) / whole));
    const tint = ((a[k] - light * paper.a) ** 2 + (b[k] - light * paper.b) ** 2) / chroma ** 2;
    if (((L[k] + 16 - light * whole) / spread) ** 2 + tint < unlike) plain++;
  }
  return plain >= seen / 2;
}
