/** Largest picture of a sheet that is worked on, pixels: an A2 sheet at 10 px/mm, and a fourth of a gigabyte in all. */
const mostPixels = 25e6;

/** The scale at which a sheet is worked on, px/mm: as wanted, or lower where so large a sheet would not fit. */
export function scaleWithin(widthMm: number, heightMm: number, wanted: number): number {
  return Math.min(wanted, Math.sqrt(mostPixels / (widthMm * heightMm)));
}
