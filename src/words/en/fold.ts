/** What is said of a card's several sheets: photographs laid together, flaps closing, patches. */
export const foldWords = {
  unknownSheet: (photo: string, sheet: string) =>
    `${photo} is said to show ${sheet}, but the card has no flap of that name. Add the flap, or name the base.`,
  noBasePhoto: 'The card names no photograph of its base: give one whose sheet is "base".',
  pictureGone: (photo: string) => `The photograph ${photo} that the card names is not there.`,
  offRegister: {
    say: (photo: string, mm: string, by: string) =>
      `${photo} does not lie well on the base: what both show is ${mm} apart (laid by ${by}).`,
    by: { corners: 'its corners', fold: 'the fold line', copper: 'matching copper' },
    do: 'Check its four corners, its size and the fold line, or photograph it again, pressed flat.',
    settle:
      'Is this the same card, with its corners in the right order? Then what both show lies within 1 mm.',
  },
  foldSide: {
    say: (flap: string) =>
      `Flap ${flap} is hinged on the wrong side: with the fold along its other edge its copper would meet its contacts.`,
    do: 'Hinge the flap along its other edge, or correct the fold line in the card. All else is checked as if it were.',
    settle: 'Close the flap: each of its strips should land on its partners.',
  },
} as const;
