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
    settle: (within: string) =>
      `Is this the same card, with its corners in the right order? Then what both show lies within ${within}.`,
  },
  inParts: {
    heading: 'Patches and flaps',
    none: 'None yet. A patch parts two strips that cross; a flap closes contacts or presses the cell.',
    edit: 'Draw and change them in step Plan',
  },
  sheets: {
    heading: 'Other sheets of this card',
    which: 'The photograph shows',
    flap: (id: string) => `flap ${id}, opened flat`,
    before: (id: string) => `the base before patch ${id}`,
    add: 'Add its photograph',
    remove: (name: string) => `Remove ${name}`,
    laid: (by: string, mm: string) => `Laid by ${by}, ${mm} off.`,
    spread: (flap: string) => `the inside of the folded base, with flap ${flap}`,
    place: (name: string) => `Corners and fold line of ${name}`,
    placeLabel: (name: string) => `${name} with the corners of its sheet and its fold line`,
    placeFold:
      'Drag the four corners onto those of the sheet and the two blue handles along its fold, or give its ends by numbers: mm from the sheet’s own top-left corner.',
    placeCorners: 'Drag the four corners onto those of the sheet, and give its size.',
    foldEnds: ['First end of the fold', 'Second end of the fold'],
    foldAsDrawn: 'Fold line as drawn in the plan',
    notLaid: 'Laid on the base once the base itself is photographed.',
    done: 'Done',
  },
  closing: {
    foam: {
      heading: 'Foam',
      cell: (x: string, y: string) => `Two layers round the cell (${x}, ${y}), on three of its sides.`,
      strokeEnd: (x: string, y: string) =>
        `One piece past the end of the stroke row (${x}, ${y}), so that the flap springs off again.`,
      rest: 'One layer elsewhere, clear of every strip that must touch.',
    },
    heading: 'Closing the flaps',
    lead: 'The flap lies over the base as if both were glass.',
    flap: 'Flap',
    slider: (id: string) => `How far flap ${id} is closed`,
    at: (degrees: string) => `${degrees} degrees`,
    picture: (id: string) => `Flap ${id} over the base: drag it across its fold to close it`,
    meets: (contact: string, much: string) => `${contact}: overlap of ${much} on its weakest side.`,
    misses: (contact: string, mm: string, direction: string) =>
      `${contact}: misses its partner by ${mm}, it lands ${direction}.`,
    none: (contact: string) => `${contact}: no copper of the flap lands there.`,
    tolerance: (percent: string, off: string) =>
      `Holds in ${percent} of 100 folds that are off by up to ${off} and 1 degree.`,
    sides: { left: 'to the left', right: 'to the right', above: 'above', below: 'below' },
  },
  foldSide: {
    say: (flap: string) =>
      `Flap ${flap} is hinged on the wrong side: with the fold along its other edge its copper would meet its contacts.`,
    do: 'Hinge the flap along its other edge, or correct the fold line in the card. All else is checked as if it were.',
    settle: 'Close the flap: each of its strips should land on its partners.',
  },
} as const;
