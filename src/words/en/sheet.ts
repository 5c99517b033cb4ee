/** What is said about the base: its outline, its size and its scale. */
export const sheetWords = {
  noOutline: 'The base was not found by itself. Put the four handles on its corners.',
  unsureOutline: 'The base was found, but not for certain. Check the four handles.',
  bowed: (much: string) =>
    `The sheet is bowed or creased: its edges stray up to ${much}. Press it flat and take it again, or go on with care.`,
  scaleOff: (percent: string, seen: string, kind: string, real: string) =>
    `The cell measures ${seen}, but a ${kind} has ${real}: the scale is off by ${percent} %. Check the base size and the corners.`,
} as const;
