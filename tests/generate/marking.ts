import { createRequire } from 'node:module';
import { createCanvas, GlobalFonts, type SKRSContext2D } from '@napi-rs/canvas';
import type { Point } from '../../src/geometry/index.ts';

/** What stands on a cell's + face. */
export interface CellMarking {
  text: string;
  /** Clockwise from upright, degrees. */
  turnDeg: number;
  /** Height of its capitals, mm. */
  capitalMm: number;
  /** Laid on dark, or pressed into the metal, which shows by its flanks alone. */
  how: 'printed' | 'pressed';
  /** Round under the rim instead of straight across. */
  round?: boolean;
}

const pxPerMm = 24;
const sideMm = 22;
/** Height of a capital against the type's size. @source Source Sans 3, OS/2 table: capital height 660 of 1000 */
const capitalShare = 0.66;

/** How many times as light the metal is made by its marking at a place from the cell's middle, mm. */
export function markingShade(marking: CellMarking): (from: Point) => number {
  const ink = drawn(marking);
  const side = sideMm * pxPerMm;
  const at = ([x, y]: Point) => {
    const [i, j] = [Math.round((x + sideMm / 2) * pxPerMm), Math.round((y + sideMm / 2) * pxPerMm)];
    return i < 0 || j < 0 || i >= side || j >= side ? 0 : ink[4 * (j * side + i) + 3] / 255;
  };
  if (marking.how === 'printed') return (from) => 1 - 0.62 * at(from);
  // Light from the top left: the flank that turns from it is dark, the other one bright.
  const flank = 0.09;
  return ([x, y]) => 1 + 0.42 * (at([x + flank, y + flank]) - at([x - flank, y - flank])) - 0.12 * at([x, y]);
}

function drawn({ text, turnDeg, capitalMm, round }: CellMarking): Uint8ClampedArray {
  const font = createRequire(import.meta.url).resolve(
    '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf',
  );
  GlobalFonts.registerFromPath(font, 'Marking');
  const side = sideMm * pxPerMm;
  const context = createCanvas(side, side).getContext('2d');
  context.translate(side / 2, side / 2);
  context.rotate((turnDeg * Math.PI) / 180);
  context.font = `${(capitalMm / capitalShare) * pxPerMm}px Marking`;
  context.textAlign = 'center';
  const half = (capitalMm * pxPerMm) / 2;
  if (round) drawRound(context, text, 7.2 * pxPerMm - half);
  else {
    context.fillText(text, 0, half);
    context.fillText('+', 0, -3 * half);
    context.fillText('3V', 0, 4.6 * half);
  }
  return context.getImageData(0, 0, side, side).data;
}

/** Each letter upright on its own radius, the middle of the text at the top. */
function drawRound(context: SKRSContext2D, text: string, radius: number): void {
  const widths = [...text].map((letter) => context.measureText(letter).width * 1.08);
  const whole = widths.reduce((sum, width) => sum + width, 0);
  let along = -whole / 2;
  for (const [n, letter] of [...text].entries()) {
    context.save();
    context.rotate((along + widths[n] / 2) / radius);
    context.fillText(letter, 0, -radius);
    context.restore();
    along += widths[n];
  }
}
