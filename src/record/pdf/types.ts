/** Two faces of one family as font files (TrueType, OpenType or WOFF), embedded into the document. */
export interface RecordFonts {
  regular: Uint8Array;
  bold: Uint8Array;
}

export type Paper = 'a4' | 'letter';

/** Paper sizes in points (1/72 inch). @source ISO 216 (A4, 210 x 297 mm); ANSI/ASME Y14.1 (Letter, 8.5 x 11 in) */
export const paperPoints: Record<Paper, readonly [width: number, height: number]> = {
  a4: [595.28, 841.89],
  letter: [612, 792],
};

export const pointsPerMm = 72 / 25.4;
