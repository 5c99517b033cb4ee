/** What the check says of each kind of finding: what is wrong, what to do, what would settle it. Lengths come as text. */
export const findingWords = {
  names: {
    'shorted-cell': 'Shorted cell',
    bridge: 'Bridge',
    gap: 'Gap',
    'reversed-lamp': 'Reversed lamp',
    'lamp-off-strip': 'Lamp off its strip',
    'lamp-on-one-strip': 'Lamp on one strip',
    'unfed-lamp': 'Unfed lamp',
    'lit-at-rest': 'Lit too soon',
    'missed-contact': 'Missed contact',
    'missing-strip': 'Strip still to lay',
    'extra-strip': 'Extra strip',
    'shifted-strip': 'Shifted strip',
    'shifted-lamp': 'Shifted lamp',
    tight: 'Tight spot',
    'narrow-neck': 'Narrow neck',
    seam: 'Seam',
    'loose-end': 'Loose end',
    'near-edge': 'Near the edge',
    'off-register': 'Sheet lies off',
  },
  place: (x: string, y: string) => `${x} from the left, ${y} from the top`,
  placeBy: (place: string, near: string) => `${place}, ${near}`,
  near: {
    lamp: (id: string) => `by lamp ${id}`,
    cell: 'by the cell',
    contact: (id: string) => `by contact ${id}`,
  },
  shortedCell: {
    rim: "Copper of the upper face's net lies under the cell's rim: the can joins both faces and the cell gets hot.",
    copper: 'Both faces of the cell are joined by copper: the cell gets hot and is ruined.',
    do: 'Take the cell out at once, cut the copper back here, and check again before putting it in.',
    settle: 'With the cell out, a meter between the two nets should show no connection.',
  },
  bridge: {
    say: (width: string, between: string, and: string) =>
      `Copper ${width} wide joins ${between} and ${and}, which must stay apart.`,
    faint: (width: string, between: string, and: string) =>
      `A faint line ${width} wide leads from the net of ${between} to that of ${and}: if it is copper, it joins what must stay apart.`,
    join: (between: string, and: string) =>
      `What is said to conduct here joins ${between} and ${and}, which must stay apart.`,
    closed: (flap: string) => ` This happens when flap ${flap} is closed.`,
    heat: ' This shorts the cell: it gets hot and is ruined.',
    do: 'Cut or lift the copper here and burnish the edges down.',
    look: 'Look through a lens, or take a second photo. Cut it if it is copper; a shadow, a crease or a pencil line is harmless.',
    settle: 'With the cell out, a meter across this place should show no connection after the cut.',
  },
  gap: {
    say: (width: string) => `The strip is broken here: ${width} of paper crosses it.`,
    starves: (lamps: string) => ` Without it ${lamps} cannot light.`,
    unsure: (width: string) =>
      `A line ${width} wide crosses the strip; this photo cannot tell a break from glare.`,
    do: 'Lay a fresh piece of tape over the break, foil against foil, and press it down.',
    look: 'Take a second photo with the lamp tilted, or look closely here.',
    settle: (lamps: string) =>
      lamps
        ? `Bridge it with a scrap of foil while the cell is pressed: ${lamps} should light.`
        : 'A meter along the strip should show a connection.',
  },
  cellReversed: {
    say: (lamps: string) =>
      `Every lamp stands against the cell (${lamps}): the cell, not the lamps, is upside down.`,
    do: 'Turn the cell over, or mark which face is up.',
    settle: 'With the cell turned, all of them should light.',
  },
  reversedLamp: {
    say: (lamp: string) => `${lamp} is the wrong way round: its + pad lies on the minus side.`,
    do: (lamp: string) => `Turn ${lamp} by half a turn so that + meets the plus strip.`,
    settle: (lamp: string) => `Hold a cell to the two strips, + to +: ${lamp} should light.`,
  },
  lampOffStrip: {
    say: (lamp: string, pad: string, off: string) => `The ${pad} pad of ${lamp} misses its strip${off}.`,
    both: (lamp: string) => `Neither pad of ${lamp} meets copper.`,
    by: (mm: string) => ` by ${mm}`,
    do: (lamp: string) => `Move ${lamp} onto the copper, or lay a scrap of tape from the strip to its pad.`,
    settle: (lamp: string) => `Press the pad down with the cell in: ${lamp} should light.`,
  },
  lampOnOneStrip: {
    say: (lamp: string) => `Both pads of ${lamp} are on one net: copper runs on beneath it.`,
    do: (lamp: string) => `Cut the strip beneath ${lamp} so that each pad has its own side.`,
    settle: 'A meter between its two pads should show no connection.',
  },
  unfedLamp: {
    say: (lamp: string, side: string) =>
      side === 'both'
        ? `No state lights ${lamp}: no way leads from the cell through it and back.`
        : `No state lights ${lamp}: its ${side} side never meets the ${side} face of the cell.`,
    do: (side: string) =>
      side === 'both'
        ? 'Follow its strips from both pads to the cell and find where they end.'
        : `Follow the strip from its ${side} pad to the cell and find where it ends.`,
    settle: (lamp: string) =>
      `Touch a cell to the lamp's two pads: if ${lamp} lights, a strip is at fault, not the lamp.`,
  },
  litAtRest: {
    say: (lamp: string, state: string) =>
      `${lamp} lights already in the state "${state}", before its own contact closes.`,
    do: 'Find the copper that leads past its contact and cut it.',
    settle: 'In that state it should stay dark.',
  },
  wrongStep: {
    say: (lamp: string, state: string, contact: string) =>
      `${lamp} lights in the state "${state}", though it waits for ${contact}.`,
    do: 'Swap the two strips, or change what the lamp waits for.',
    settle: 'Stroke slowly with the cell in: one lamp after another should light.',
  },
  outOfOrder: {
    say: (contact: string, order: string, among: string) =>
      `A finger does not meet ${contact} as number ${order}: ${among} lie in another order along the stroke.`,
    do: 'Number the contacts as they lie, or move them.',
    settle: 'Stroke slowly with the cell in: the lamps should light in their order.',
  },
  nest: {
    low: (foam: string, cell: string) =>
      `Foam of ${foam} round a cell of ${cell} is too low: the flap rests on the cell and lights it at rest.`,
    high: (foam: string, cell: string) =>
      `Foam of ${foam} round a cell of ${cell} is so high that pressing may not bring the flap down to it.`,
    raise: 'Lay another layer of foam on three sides of the cell.',
    lower: 'Take a layer of foam away.',
    settle: 'Close the flap with the cell in: dark at rest, lit when pressed.',
  },
  patch: {
    say: (patch: string, mm: string, limit: string) =>
      `Patch ${patch} covers the crossing by only ${mm} (at least ${limit} all round).`,
    do: 'Lay a larger patch, or trim the copper that runs on it.',
    settle: 'With the cell out, a meter between the two strips should show no connection, also when bent.',
  },
  missedContact: {
    flap: (contact: string, mm: string, direction: string) =>
      `At ${contact} the flap's copper lands ${mm} ${direction === 'above' || direction === 'below' ? direction : `${direction} of`} its partner.`,
    shift: (direction: string) => `Shift it ${direction}, or widen either strip.`,
    cell: 'No copper meets this face of the cell.',
    none: (contact: string) => `Contact ${contact} has no copper within reach.`,
    one: (contact: string) => `Contact ${contact} finds copper on one side only.`,
    do: 'Lengthen the strip to here, or move the contact.',
    settle: 'Press it with the cell in: its lamps should light.',
  },
  missingStrip: {
    say: (strip: string) => `Strip ${strip} of the plan is still to lay.`,
    do: 'Lay it, or take it out of the plan.',
  },
  extraStrip: { say: 'Copper here is not in the plan.', do: 'Take it off, or draw it into the plan.' },
  shiftedStrip: {
    say: (strip: string, mm: string) => `Strip ${strip} lies ${mm} from its place in the plan.`,
    do: 'Check that its lamps and contacts still meet it.',
  },
  shiftedLamp: {
    say: (lamp: string, mm: string) =>
      `${lamp} lies ${mm} from its place in the plan: its light hole would miss it.`,
    do: 'Move the lamp, or punch the hole where the lamp is.',
  },
  tight: {
    say: (mm: string, limit: string) => `Two nets come within ${mm} of each other (limit ${limit}).`,
    do: 'Trim one strip back, or cover one with clear tape.',
    settle: 'Bend the card gently with the cell in: nothing should flicker.',
  },
  narrowNeck: {
    say: (mm: string, usual: string) =>
      `The strip narrows to ${mm} here (${usual} elsewhere): it may tear when the paper bends.`,
    do: 'Lay a second piece of tape over the neck.',
    settle: 'Bend the card gently here with the cell in: nothing should flicker.',
  },
  seam: {
    say: 'An overlap: a photo cannot show whether it conducts, since ordinary adhesive does not.',
    glare: 'Glare hides the strip here: it is taken as whole, but this photo cannot show it.',
    do: 'Press it with a bone folder, fold the end under so that foil meets foil, or meter it.',
    settle: 'Press here with the cell in: what lies beyond should light and stay lit.',
  },
  looseEnd: {
    say: 'A strip ends here and leads to nothing that is marked.',
    do: 'Mark what it leads to, or leave it.',
  },
  nearEdge: {
    say: (mm: string, limit: string) => `Copper lies ${mm} from the edge (limit ${limit}).`,
    do: 'Keep it clear of the trim: a cut edge can lift it.',
  },
  lookHere: 'Look here: this is not sure.',
  settleByEye: 'Look closely, or photograph it again.',
  notSeen: {
    joints: 'Whether the adhesive conducts where tape overlaps tape or a lamp sits on it.',
    parts: 'A dead lamp or a flat cell.',
    patches: 'Copper beneath a patch: taken as the card says.',
    covered: 'Copper beneath lamps and the cell: taken to run on where it enters.',
    upperFace: 'Whether anything meets the upper face of the cell: no place for it is marked.',
    noCell: 'Which lamps light: no cell is marked yet.',
    contacts: 'Whether a flap or finger presses hard enough to close its contact.',
    fineGaps: (mm: string) => `Gaps finer than ${mm}: this photo is not sharp or large enough.`,
  },
};
