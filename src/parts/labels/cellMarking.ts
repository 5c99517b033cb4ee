import { cellKinds } from '../../card/index.ts';
import type { CellKind } from '../../card/index.ts';
import type { LineReader } from '../../engine/ocr.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import { cropLine } from './crop.ts';
import { turnedFace, unrolledFace, type Disc, type Face, type Grey } from './disc.ts';
import { greyOf } from './ink.ts';
import { textBoxes } from './textBoxes.ts';
import type { Label, TextBox } from './types.ts';

/** What a marking is spelt with, and what is mistaken for it. */
const letters = 'CRLG0123456789OV+';
/** Turns that are looked at for the likeliest, degrees apart, and how many of them are read. */
const turnStepDeg = 5;
const turnsRead = 4;
/** Six signs are so many times wider than high, four a little less. */
const aspect = { least: 1.6, most: 9 };
/** A marking this sure needs no further look. */
const plain = 0.85;
/** Two equal readings are so sure at least, where each alone was a guess. */
const twice = 0.7;

/**
 * Reads the type that is stamped or printed on a cell's face, straight across or round under the rim, however the cell lies.
 * @param disc the cell's circle on the sheet, mm
 * @param fits kinds whose diameter agrees with the circle; others are not proposed
 * @returns undefined where nothing legible is there
 * @source names of the types: IEC 60086-3, as `cellKinds` lists them
 */
export async function readCellMarking(
  sheet: SquaredSheet,
  disc: Disc,
  reader: LineReader,
  fits: readonly CellKind[] = cellKinds,
  goOn: () => boolean = () => true,
): Promise<Label | undefined> {
  const grey: Grey = { ...sheet, grey: greyOf(sheet) };
  const read: { text: string; kind: CellKind; certainty: number }[] = [];
  for (const face of faces(grey, disc))
    for (const line of linesOn(face)) {
      if (!goOn()) return undefined;
      // Held to these letters the recogniser reads on where it would stray, but is no judge of how sure it is.
      for (const allowed of ['', letters]) {
        const { text, certainty } = await reader.read(line, allowed);
        const kind = kindIn(text);
        if (!kind || !fits.includes(kind)) continue;
        read.push({ text, kind, certainty });
        if (certainty > plain) return labelOf(disc, read);
      }
    }
  return labelOf(disc, read);
}

function* faces(grey: Grey, disc: Disc): Generator<Face> {
  const level = turnedFace(grey, disc, 0);
  const turns = Array.from({ length: 180 / turnStepDeg }, (_, k) => k * turnStepDeg)
    .map((turnDeg) => ({ turnDeg, sharp: rowSharpness(level, turnDeg) }))
    .sort((a, b) => b.sharp - a.sharp)
    .slice(0, turnsRead);
  for (const { turnDeg } of turns) {
    yield turnedFace(grey, disc, turnDeg);
    yield turnedFace(grey, disc, turnDeg + 180);
  }
  yield unrolledFace(grey, disc, false);
  yield unrolledFace(grey, disc, true);
}

/** How steeply the ink of the rows changes between them, were the face turned so: most where lines of text lie level. */
function rowSharpness({ rgb, width, height, beyond }: Face, turnDeg: number): number {
  const [cos, sin] = [Math.cos((turnDeg * Math.PI) / 180), Math.sin((turnDeg * Math.PI) / 180)];
  const rows = new Float64Array(2 * height);
  for (let j = 0, k = 0; j < height; j++)
    for (let i = 0; i < width; i++, k++) {
      if (beyond[k]) continue;
      const row = Math.round((j - height / 2) * cos + (i - width / 2) * sin + height);
      rows[row] += 255 - rgb[3 * k];
    }
  return rows.reduce((sum, ink, j) => sum + (j > 1 ? (ink - rows[j - 2]) ** 2 : 0), 0);
}

function linesOn(face: Face) {
  const k = face.pxPerMm;
  const grey = greyOf(face);
  return textBoxes(face, face.beyond)
    .filter(isMarking)
    .sort((a, b) => wide(b) - wide(a))
    .slice(0, 3)
    .map(({ box }) => {
      const [ox, oy] = face.originMm;
      const px = {
        x0: (box.x0 - ox) * k,
        y0: (box.y0 - oy) * k,
        x1: (box.x1 - ox) * k,
        y1: (box.y1 - oy) * k,
      };
      return cropLine(grey, face.width, face.height, px, false);
    });
}

const wide = ({ box }: TextBox) => box.x1 - box.x0;

function isMarking({ box, heightMm }: TextBox): boolean {
  const ratio = (box.x1 - box.x0) / heightMm;
  return ratio > aspect.least && ratio < aspect.most;
}

/** The kind that a read line names; its last two digits tell kinds apart and must be read as they are. */
export function kindIn(text: string): CellKind | undefined {
  const tight = text
    .toUpperCase()
    .replace(/[^A-Z0-9]/g, '')
    .replace(/O/g, '0');
  return cellKinds.find((kind) => {
    const [head, tail] = [kind.slice(0, 2), kind.slice(2)];
    const heads = head === 'CR' ? '(?:CR|GR|0R|6R|R)' : '(?:LR|L8)';
    return new RegExp(`${heads}${tail}`).test(tight);
  });
}

function labelOf(
  { at, diameterMm }: Disc,
  read: readonly { text: string; kind: CellKind; certainty: number }[],
): Label | undefined {
  const [best] = [...read].sort((a, b) => b.certainty - a.certainty);
  if (!best) return undefined;
  const others = read.filter(({ kind }) => kind !== best.kind);
  const same = read.length - others.length;
  const rival = Math.max(0, ...others.map(({ certainty }) => certainty));
  const certainty = (same > 1 ? Math.max(twice, best.certainty) : best.certainty) * (1 - rival);
  const r = diameterMm / 2;
  const box = { x0: at[0] - r, y0: at[1] - r, x1: at[0] + r, y1: at[1] + r };
  return { text: best.text, certainty, at, box, means: { kind: 'cell', cell: best.kind, onFace: true } };
}
