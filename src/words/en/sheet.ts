/** What is said about the base: its outline, its size and its scale. */
export const sheetWords = {
  noOutline: 'The base was not found by itself. Put the four handles on its corners.',
  unsureOutline: 'The base was found, but not for certain. Check the four handles.',
  bowed: (much: string) =>
    `The sheet is bowed or creased: its edges stray up to ${much}. Press it flat and take it again, or go on with care.`,
  scaleOff: (percent: string, seen: string, kind: string, real: string) =>
    `The cell measures ${seen}, but a ${kind} has ${real}: the scale is off by ${percent} %. Check the base size and the corners.`,
  tapeOff: (seen: string, stated: string, percent: string) =>
    `The tape is ${seen} wide here, but the plan has ${stated}: the scale is off by ${percent} %.`,
  lampsOff: (seen: string, stated: string, percent: string) =>
    `The lamps lie ${seen} apart here in the mean, but the card has ${stated}: the scale is off by ${percent} %.`,
  tooLargeTaken:
    'Something larger than the base was taken for it, such as a sheet beneath it, or the base is larger than stated. Drag the four corners onto those of the base, or state its true size.',
  tooSmallTaken:
    'Something smaller than the base was taken for it, such as a frame drawn on it, or the base is smaller than stated. Drag the four corners onto those of the base, or state its true size.',
} as const;
