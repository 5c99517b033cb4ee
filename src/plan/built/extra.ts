import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { flapOver } from '../../parts/index.ts';
import type { Piece, Traced } from '../../trace/index.ts';
import type { Ribbon } from '../strip/ribbon.ts';
import { ownerAt, ownership } from './ownership.ts';
import type { Ownership } from './ownership.ts';

/** Copper that the plan does not have. */
export interface ExtraCopper {
  at: Point;
  piece: number;
  lengthMm: number;
  widthMm: number;
  /** 0..1: how sure the picture is that it is copper at all. */
  sure: number;
}

/** Copper this near to a planned strip is that strip, laid by hand. */
const SLACK_MM = 1.5;
const CELLS_PER_MM = 2;
/** Tape is so wide, mm, and a stray piece of it at least so long. */
const WIDTHS_MM = [1.5, 9] as const;
const LEAST_LENGTH_MM = 5;
/** Tape has one width: so much of its length lies within a quarter of the middle one. */
const EVEN_SHARE = 0.7;
/** Steps of a centre-line, mm. */
const STEP_MM = 0.5;

/**
 * Stray pieces of tape: stretches of centre-line farther from every known ribbon than a hand's slack, on the sheet, and
 * as even in width as tape is; a shadow, a blot or a label is not. Each piece is told once, at its longest stretch.
 */
export function extraCopper(traced: Traced, card: Card, known: Ribbon[]): ExtraCopper[] {
  const owners = ownership(known, SLACK_MM, traced, CELLS_PER_MM);
  return traced.pieces.flatMap((piece) => {
    const stray = strayStretches(piece, owners, traced, card);
    const [longest] = stray.sort((a, b) => b.at.length - a.at.length);
    return longest ? tapeOf(longest, piece) : [];
  });
}

interface Stretch {
  at: Point[];
  widths: number[];
}

/** Runs of a piece's centre-lines that no ribbon has. */
function strayStretches({ lines }: Piece, owners: Ownership, { baseMm }: Traced, { flaps }: Card): Stretch[] {
  const onSheet = (p: Point): boolean =>
    (p[0] >= 0 && p[1] >= 0 && p[0] <= baseMm.width && p[1] <= baseMm.height) ||
    flaps.some((flap) => flapOver(flap, p));
  return lines.flatMap(({ path, widths }) => {
    const found: Stretch[] = [];
    let run: Stretch = { at: [], widths: [] };
    path.forEach((p, k) => {
      if (ownerAt(owners, p) !== 0 || !onSheet(p)) {
        found.push(run);
        run = { at: [], widths: [] };
        return;
      }
      run.at.push(p);
      run.widths.push(widths[k]);
    });
    return [...found, run];
  });
}

function tapeOf({ at, widths }: Stretch, { id, sure }: Piece): ExtraCopper[] {
  if (at.length === 0) return [];
  const widthMm = [...widths].sort((a, b) => a - b)[widths.length >> 1];
  // A centre-line ends half a width before its tape does.
  const lengthMm = STEP_MM * (at.length - 1) + widthMm;
  const even = widths.filter((w) => Math.abs(w - widthMm) <= 0.25 * widthMm).length / widths.length;
  const tape = widthMm >= WIDTHS_MM[0] && widthMm <= WIDTHS_MM[1] && even >= EVEN_SHARE;
  if (!tape || lengthMm < Math.max(LEAST_LENGTH_MM, 1.5 * widthMm)) return [];
  return [{ at: at[at.length >> 1], piece: id, lengthMm, widthMm, sure }];
}
