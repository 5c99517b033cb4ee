/** A usual base: mm, upright (width <= height). */
export interface SheetSize {
  name: string;
  width: number;
  height: number;
}

export const mmPerInch = 25.4;

/** Nominal A sizes. @source ISO 216:2007, main ISO-A series */
export const isoSizes: readonly SheetSize[] = [
  { name: 'A3', width: 297, height: 420 },
  { name: 'A4', width: 210, height: 297 },
  { name: 'A5', width: 148, height: 210 },
  { name: 'A6', width: 105, height: 148 },
  { name: 'A7', width: 74, height: 105 },
];

const inches = (name: string, width: number, height: number): SheetSize => ({
  name,
  width: width * mmPerInch,
  height: height * mmPerInch,
});

/** Usual inch cards; common practice, no source (Letter: ANSI/ASME Y14.1 size A). */
export const inchSizes: readonly SheetSize[] = [
  inches('3 1/2 x 5 in', 3.5, 5),
  inches('4 x 6 in', 4, 6),
  inches('4 1/4 x 5 1/2 in', 4.25, 5.5),
  inches('5 x 7 in', 5, 7),
  inches('6 x 6 in', 6, 6),
  inches('Letter', 8.5, 11),
];

export const sheetSizes: readonly SheetSize[] = [...isoSizes, ...inchSizes];

/**
 * Tolerance on a trimmed dimension of an ISO sheet, mm.
 * @source ISO 216:2007: 1.5 mm to 150 mm, 2 mm to 600 mm, 3 mm above (from memory)
 */
export function isoToleranceMm(dimension: number): number {
  if (dimension <= 150) return 1.5;
  return dimension <= 600 ? 2 : 3;
}

/**
 * The usual size that a measured sheet comes nearest to, in either direction; undefined when none is within `slackMm`.
 */
export function nearestSize(width: number, height: number, slackMm: number): SheetSize | undefined {
  const away = (s: SheetSize) =>
    Math.max(Math.abs(s.width - Math.min(width, height)), Math.abs(s.height - Math.max(width, height)));
  const best = sheetSizes.reduce((a, b) => (away(b) < away(a) ? b : a));
  return away(best) <= slackMm ? best : undefined;
}
