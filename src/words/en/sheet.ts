/** What is said about the base: its outline, its size and its scale. */
export const sheetWords = {
  noOutline: 'The base was not found by itself. Put the four handles on its corners.',
  unsureOutline: 'The base was found, but not for certain. Check the four handles.',
  bowed: (mm: string) =>
    `The sheet is bowed or creased: its edges stray up to ${mm} mm. Press it flat and take it again, or go on with care.`,
  scaleOff: (percent: string, seenMm: string, kind: string, trueMm: string) =>
    `The cell measures ${seenMm} mm, but a ${kind} has ${trueMm} mm: the scale is off by ${percent} %. Check the base size and the corners.`,
} as const;
