/** Sentences of planning, printing and comparing. */

const maskFaults = {
  open: 'open',
  short: 'short',
  nibble: 'nibble',
  spur: 'spur',
  'pin-hole': 'pin-hole',
  stray: 'stray copper',
  missing: 'not there at all',
} as const;

const sides = {
  dark: 'the dark side is taken for the conductor',
  light: 'the light side is taken for the conductor',
  copper: 'the conductor is told by its copper colour',
} as const;

export const planWords = {
  compareUsage:
    'foilproof compare --built A.png --plan B.png [--px-per-mm N] [--tolerance-px N] [--conductor dark|light|copper] [--json]',
  compareNeeds: (option: string) => `compare needs --${option} FILE. Use: ${planWords.compareUsage}`,
  unknownOption: (option: string) => `compare does not know ${option}. Use: ${planWords.compareUsage}`,
  notPositive: (option: string, given: string) => `--${option} takes a number above 0, not "${given}".`,
  notASide: (given: string) => `--conductor takes dark, light or copper, not "${given}".`,
  noFile: (path: string) => `There is no file ${path}. Check the path.`,
  tooUnlike: (built: string, plan: string) =>
    `${built} and ${plan} differ too much in size to be laid on each other. Square both up to the same scale first.`,
  conductorSaid: (name: string, side: keyof typeof sides, guessed: boolean) =>
    `${name}: ${sides[side]}${guessed ? ' (--conductor says otherwise if that is wrong)' : ''}.`,
  maskFault: (kind: keyof typeof maskFaults) => maskFaults[kind],
  maskFaultLine: (kind: keyof typeof maskFaults, x: string, y: string, size: string, net: boolean) =>
    `${maskFaults[kind].padEnd(16)} at ${x}, ${y}   ${size}${net ? '   changes a net' : ''}`,
  progress: (laid: number, of: number) => `${laid} of ${of} ${of === 1 ? 'strip' : 'strips'} laid`,
  compareClear: 'Same nets: no open and no short against the plan.',
  compareHolds: (opens: number, shorts: number, missing: number) =>
    `Hold: ${[
      [opens, 'open'],
      [shorts, 'short'],
      [missing, 'missing part'],
    ]
      .filter(([n]) => n)
      .map(([n, word]) => `${n} ${word}${n === 1 ? '' : 's'}`)
      .join(', ')} against the plan.`,

  page: {
    heading: 'Draw the plan',
    lead: 'To scale, over the front’s artwork or on blank paper. Ends settle on pads, corners on 45 and 90 degrees.',
    sheetLabel: 'The plan on the base, to scale',
    keys: 'Delete removes what is picked, Escape drops the strip under way. B held down blinks between the photograph and the plan.',
    tool: 'Lay down',
    tools: {
      pick: 'Move and pick',
      strip: 'Strip',
      lamp: 'Lamp',
      cell: 'Cell',
      contact: 'Contact',
      patch: 'Patch',
      flap: 'Flap',
      artwork: 'Artwork',
    },
    hints: {
      pick: 'Tap a strip or part to change it; drag a corner or an end to move it.',
      strip: 'Tap where the strip begins.',
      stripOn: 'Tap each corner; tap the last place again, or Finish, to end it.',
      lamp: 'Tap the + end of a lamp, where the artwork needs light.',
      lampMinus: 'Now tap its − end.',
      cell: 'Tap the middle of the cell’s place.',
      contact: 'Tap an opening that a finger or a flap closes, or drag from one side to the other.',
      patch: 'Drag from corner to corner of the paper that parts two strips.',
      flap: 'Drag along the edge of the base on which the flap is hinged.',
      artwork: 'Drag the picture to where it belongs, or one of its corners to draw it out.',
      corners: (name: string) => `Tap the ${name} corner of the front in the picture.`,
      cornerNames: ['top-left', 'top-right', 'bottom-right', 'bottom-left'],
      measureFrom: 'Tap one of two places whose distance you know.',
      measureTo: 'Now tap the other one.',
    },
    net: 'Net',
    width: 'Tape width',
    finish: 'Finish strip',
    drop: 'Drop it',
    removePicked: 'Delete what is picked',
    base: 'Size of the base',
    snapped: {
      pad: (to: string) => `settled on ${to}`,
      spacing: (to: string) => `spaced evenly beside ${to}`,
      angle: 'settled on a fold angle',
      none: '',
    },

    startHeading: 'A beginning',
    suggest: 'Suggest a route',
    suggesting: 'Looking for a way without crossings…',
    suggestion: (strips: number, tape: string, folds: number, crossings: number) =>
      `${strips} strips, ${tape} of tape, ${folds} folds, ${
        crossings ? `${crossings} to be crossed over patches` : 'no crossing'
      }.`,
    tracedProposal: (strips: number) => `${strips === 1 ? 'One strip' : `${strips} strips`} traced.`,
    noRoute: 'No way was found for any strip. Give the lamps and the cell more room.',
    sketchLost:
      'The edges of the sketch were not found. Lay the whole sheet on a darker table and photograph it again.',
    nothingTraced:
      'No stroke was found on the sketch. Draw in bold dark lines on white paper and photograph the whole sheet.',
    accept: 'Take it',
    refuse: 'Leave it',
    needsParts: 'A route wants the cell and at least one lamp.',
    fromPhoto: 'Trace the photograph of the card',
    fromSketch: 'Trace a photograph of a sketch',
    tracing: 'Tracing the sketch…',

    artworkHeading: 'Artwork beneath',
    artworkNone:
      'Lay a picture or scan of the front beneath the plan, so that the lamps stand where it needs light.',
    artworkChoose: 'Choose a picture of the front',
    artworkOther: 'Choose another picture',
    artworkFading: 'How strongly it shows',
    artworkCorner: (corner: string) => `${corner} of the artwork`,
    artworkCornerKeys: 'Arrow keys move by 1 mm, with Shift by 10, with Alt by 0.1.',
    artworkCorners: 'Place it by its corners',
    artworkMeasure: 'Scale it by two places',
    artworkApart: 'Their distance',
    artworkScale: 'Scale it',
    artworkStop: 'Stop placing',
    artworkRemove: 'Take the picture away',
    artworkAlt: 'Artwork of the front',

    strips: 'Strips, in the order of laying',
    noStrips: 'No strip is planned yet.',
    remove: (id: string) => `Remove ${id}`,
    removeStrip: 'Delete strip',
    stripName: (id: string) => `Strip ${id}`,
    stripLine: (net: string, width: string, length: string) => `net ${net}, ${width} wide, ${length} long`,
    corners: 'Places along it',
    corner: (n: number) => `Place ${n}`,
    cornerRemove: (n: number) => `Remove place ${n}`,
    earlier: 'Lay it earlier',
    later: 'Lay it later',
    sheets: 'Patches and flaps',
    patch: (id: string) => `Patch ${id}`,
    flap: (id: string) => `Flap ${id}`,
    patchLine: (width: string, height: string) => `${width} x ${height}`,
    flapUse: 'What closing it does',
    flapUses: {
      cell: 'presses the cell',
      press: 'closes a contact',
      stroke: 'is stroked along contacts',
    },
    liesOn: 'Lies on',
    onBase: 'the base',
    onFlap: (id: string) => `flap ${id}, its underside opened flat`,
    beneath: 'Strips that run beneath it',
    standing: {
      laid: 'laid',
      partly: 'laid in part',
      shifted: 'laid beside its place',
      'to-lay': 'still to lay',
      unseen: 'not seen',
      blind: 'burnt out or black in the photograph: cannot tell',
    },

    checksHeading: 'What the check says of it',
    checking: 'Checking…',
    checksClear: 'Nothing stands against this plan.',
    checksNothing: 'Draw a strip and it is checked as you draw.',
    crossing: (nets: readonly string[]) =>
      `${nets.join(' and ')} cross here: lay a patch between, or go another way.`,
    layPatch: 'Lay a patch',
    at: (x: string, y: string) => `${x} from the left, ${y} from the top`,

    compareHeading: 'The build over the plan',
    wipe: 'Photograph shown from the left up to',
    wiped: (percent: number) => `${percent} % of the width`,
    blink: 'Hold B, or this, to blink',
    blinkKeys: 'Held down, the plan is hidden.',
    noBuild: 'Photograph the base in step Shoot to lay the build over its plan.',

    printHeading: 'Print it at its true size',
    paper: 'Paper',
    papers: { a4: 'A4', letter: 'Letter, 8½ x 11 in' },
    print: 'Make the PDF',
    printing: 'Making the PDF…',
    printed: (name: string, bar: string) =>
      `${name} is made. Print it at 100 % and measure the bar of ${bar}.`,
    fileName: 'plan',

    frontHeading: 'The punched front against the lamps',
    frontLead: 'Photograph the front with its holes punched, on a dark table, the whole sheet in view.',
    frontSide: 'Side seen',
    frontSides: { back: 'its back', face: 'its face' },
    frontChoose: 'Choose that photograph',
    frontWorking: 'Measuring the holes…',
    frontUnsure:
      'The edges of the front may not have been found: look whether it lies square on the base here. If not, photograph it on a dark table with all four sides in view.',
    frontLost:
      'The edges of the front were not found. Photograph it on a dark table with all four sides in view.',
    frontOk: (lamp: string, miss: string) => `${lamp}: the hole lies over it, off by ${miss}.`,
    frontMiss: (lamp: string, miss: string, way: string) =>
      `${lamp}: the hole misses it by ${miss}, ${way} as seen on the face.`,
    frontNone: (lamp: string) => `${lamp}: no hole near it.`,
    frontWays: { left: 'too far left', right: 'too far right', up: 'too high', down: 'too low' },
    frontAllRight: 'Every lamp has its hole.',
    frontNoLamps: 'Place the lamps first.',
  },
  nothingPlanned:
    'The card has no planned strips, so there is nothing to print. Draw the plan or take a suggested route first.',
  notAPaper: (given: string) => `--paper takes a4 or letter, not "${given}".`,
  printTitle: (title?: string) => (title ? `Plan of ${title}` : 'Plan of a tape circuit'),
  baseSheet: 'Base, copper side',
  baseNote:
    'Print at 100 %, measure the bar below, cut along the outline. Lay the strips in the order of their numbers; dashes across a corner are creases. The tag at the lower edge stays in view.',
  flapSheet: (id: string) => `Flap ${id}, closed`,
  flapNote:
    'As its underside meets the base, seen through from above. Planned with the flap open, it is mirrored about the fold.',
  punchFront: 'Punch template, face of the front',
  punchFrontNote: 'Lay it on the face of the front and prick through the crosses.',
  punchBack: 'Punch template, back of the front',
  punchBackNote: 'Mirrored: lay it on the back of the front and punch from there.',
  foamSheet: 'Foam map',
  foamNote:
    'Cut the foam to these outlines and lay as many layers as stated, so that the front clears the cell and the lamps.',
  foamLabel: (layers: number, high: string) => `${layers} x ${high}`,
  tile: (row: number, rows: number, column: number, columns: number) =>
    `part: row ${row} of ${rows}, column ${column} of ${columns}`,
  sheetAlt: (title: string, strips: number, lamps: number, holes: number) =>
    `${title} at its true size: ${strips} strips, ${lamps} lamps, ${holes} holes.`,
  bar: (long: string) =>
    `${long}. If it measures otherwise, print again at 100 % without fitting to the page.`,
  barAlt: (long: string) => `A bar ${long} long to check the scale of the print.`,
  half: '(split)',
  cutHeading: 'Cut list',
  cutNote: (roll: string) =>
    `Lengths to cut hold one tape width more for each fold and for each end that laps another strip. Tape on the roll: ${roll}; narrower strips are split from it along its length.`,
  cutColumns: ['No.', 'Strip', 'Width', 'Lies', 'Folds', 'Laps', 'Cut'],
  cutTotal: (width: string, cut: string, roll: string) =>
    `${width} wide: ${cut} to cut, ${roll} off the roll.`,
  cutSum: (long: string) => `In all ${long} off the roll.`,
  partsHeading: 'Parts',
  partsColumns: ['Number', 'Part'],
  lampPart: (colour: string) => `${colour} lamp (LED)`,
  resistorPart: (ohm: string) => `resistor ${ohm} ohm`,
  cellPart: (kind: string) => `coin cell ${kind}`,
  tapePart: 'copper tape',
  patchPart: (wider: string) => `paper patch, ${wider} wider on each side than the strips that cross`,
  foamPart: (high: string) => `layer of foam tape, ${high}`,
  stepsHeading: 'Building, with a test after each step',
  test: 'Test:',
  steps: (strips: { id: string; net: string }[], lamps: number) => [
    {
      do: 'Print the base sheet, measure the bar, cut the base out and fold the flaps.',
      test: 'the bar is as long as it says, and the flaps close on their marks.',
    },
    ...strips.map(({ id, net }, k) => ({
      do: `Lay strip ${k + 1}, ${id}. At a corner fold away from the turn and back over; at a lap fold the end under, so that copper meets copper.`,
      test: `with a meter or a cell and a lamp: the strip conducts from end to end${
        strips.slice(0, k).some((s) => s.net === net) ? ', also to the strips of its net laid before' : ''
      }${strips.slice(0, k).some((s) => s.net !== net) ? ', and to no other net' : ''}.`,
    })),
    {
      do: `Try each of the ${lamps} lamps on the cell, mark its plus, and fix it over its outline.`,
      test: 'with the cell pressed in, each lamp lights as its state says; turn one that stays dark.',
    },
    {
      do: 'Photograph the base and check it before anything is glued.',
      test: 'the check says clear, or clear once what it lists has been seen to by hand.',
    },
    {
      do: 'Punch the light holes, lay the foam, lay the front on loosely.',
      test: 'every lamp shines through its hole, and the cell opens by itself when let go.',
    },
    {
      do: 'Glue the front on and shut the cell in.',
      test: 'the card lights as planned, and a child cannot reach the cell.',
    },
  ],
};
