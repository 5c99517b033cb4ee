import type { Masks } from './classical.ts';
import type { CopperMask } from './types.ts';

/** mm from the base's border that are looked at: tape that lies on the sheet reaches farther in. */
const brinkMm = 1.8;
/** Copper that far in, so much to either side, mm, is what goes on to the border. */
const besideMm = 0.6;

/**
 * Opens what passes for copper along the base's border alone: the table seen beside a border that is a little off, the
 * sheet's own thickness and its shade. Tape that runs to the border comes from within the sheet.
 */
export function openBrink(masks: Masks, { width, height, pxPerMm, originMm, baseMm }: Frame): Masks {
  const [filled, strict] = [masks.filled.slice(), masks.strict.slice()];
  const beside = Math.round(besideMm * pxPerMm);
  const row = (y: number): number => Math.floor((y - originMm[1]) * pxPerMm);
  const column = (x: number): number => Math.floor((x - originMm[0]) * pxPerMm);
  const across = (n: number, along: number): number => n * width + along;
  const down = (n: number, along: number): number => along * width + n;
  side({ line: row(brinkMm), out: -1, lines: height, length: width, at: across });
  side({ line: row(baseMm.height - brinkMm), out: 1, lines: height, length: width, at: across });
  side({ line: column(brinkMm), out: -1, lines: width, length: height, at: down });
  side({ line: column(baseMm.width - brinkMm), out: 1, lines: width, length: height, at: down });
  return { ...masks, filled, strict };

  /** Goes along a line inside the border; what lies outward of a place stays where the line itself is copper near by. */
  function side({ line, out, lines, length, at }: Side): void {
    if (line < 0 || line >= lines) return;
    const next = new Int32Array(length + 1).fill(length + beside + 1);
    for (let a = length - 1; a >= 0; a--) next[a] = masks.filled[at(line, a)] ? a : next[a + 1];
    let last = -beside - 1;
    for (let a = 0; a < length; a++) {
      if (next[a] === a) last = a;
      if (a - last <= beside || next[a] - a <= beside) continue;
      for (let n = line + out; n >= 0 && n < lines; n += out) filled[at(n, a)] = strict[at(n, a)] = 0;
    }
  }
}

type Frame = Pick<CopperMask, 'width' | 'height' | 'pxPerMm' | 'originMm' | 'baseMm'>;

interface Side {
  /** The line, of how many, how long it is, and the way out from it. */
  line: number;
  lines: number;
  length: number;
  out: 1 | -1;
  /** The pixel at a place along the n-th line. */
  at: (n: number, along: number) => number;
}
