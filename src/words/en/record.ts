/** Words of the record: headings, captions, table heads. */
export const recordWords = {
  untitled: 'Untitled card',
  heading: (title: string) => `${title}: proof record`,
  verdict: {
    clear: 'Clear to glue',
    'clear-once-checked': (open: number) => `Clear once checked: ${open} to settle by hand`,
    hold: (holding: number) => `Hold: ${holding} to put right`,
  },
  madeFrom: (photo: string, width: string, height: string) =>
    `Made from ${photo}. Base ${width} x ${height}.`,
  readAt: (density: string, gap: string) =>
    `The photograph shows ${density} on the base; the narrowest gap it can show is ${gap}.`,
  sections: {
    sheet: 'The sheet with its proof marks',
    findings: 'Findings',
    redrawn: 'The circuit redrawn to scale',
    diagram: 'Circuit diagram',
    states: 'What lights in each state',
    power: 'Current and life',
    nets: 'Nets',
    parts: 'Parts',
    cuts: 'Strips',
    steps: 'Photographs by step',
    notSeen: 'Not seen',
    cautions: 'Cautions',
    note: 'Maker’s note',
  },
  certainty: (percent: number) => `certainty ${percent} %`,
  toDo: 'Do',
  toSettle: 'Settles it',
  settledBy: (note: string) => (note ? `Settled by hand: ${note}` : 'Settled by hand.'),
  noFindings: 'Nothing to say against it.',
  nothingUnseen: 'Nothing was hidden from the photograph.',
  figure: {
    sheet: (count: number) =>
      count === 1
        ? 'The squared photograph with 1 proof mark'
        : `The squared photograph with ${count} proof marks`,
    cutOut: (number: number) => `The photograph round mark ${number}`,
    redrawn: 'Copper as traced, lamps with their plus, the cell, contacts and patches; true to scale',
    lamps:
      'Each lamp as bright as it would look, in each state: its halo is its light, a cross is a dark lamp',
    diagram: 'Lamps, cell and contacts in standard symbols; the lines are nets, not strips',
  },
  redrawn: {
    up: (face: string) => `${face} up`,
    bar: (long: string) => `${long}; measure it to know that the print is true`,
    ohm: (ohm: number) => `${ohm} ohm`,
  },
  power: {
    advice: 'To light it better',
    joints: 'Joints to press first',
    lesson: 'Why joints matter and tape does not',
  },
  states: {
    caption: 'Lamp current in mA per state; lit, dim or dark',
    state: 'State',
    cell: 'Cell',
    shorted: 'shorted',
    looks: { lit: 'lit', dim: 'dim', dark: 'dark' },
  },
  nets: {
    caption: 'Copper that is joined, and what sits on it',
    head: ['Net', 'Pieces', 'Pads', 'Copper'],
  },
  parts: {
    caption: 'What the card needs',
    head: ['Part', 'What', 'Where'],
    lamp: (colour: string) => `${colour} lamp`,
    series: (ohm: string) => `with ${ohm} ohm in line`,
    own: (volt: string, mA: string) => `${volt} V at ${mA} mA`,
    cell: (kind: string, up: string) => `${kind}, ${up} up`,
    flap: 'flap',
    patch: 'patch',
    press: 'contact, pressed',
    stroke: (order: string) => `contact, stroked${order}`,
    cellName: 'cell',
    pads: (plus: string, minus: string) => `+ at ${plus}, - at ${minus}`,
  },
  strips: {
    caption: 'Copper as it lies on the sheet',
    head: ['Piece', 'Net', 'Usual width', 'Centre-line', 'Copper'],
    planned: 'Cut list, in the order of laying',
    plannedHead: ['Strip', 'Net', 'Width', 'Lies', 'Folds', 'Laps', 'Cut'],
    total: (length: string) =>
      `In all ${length} to cut: each fold, and each end that laps another strip, takes a tape’s width more than lies.`,
  },
  steps: {
    base: 'the base',
    again: 'a further shot of the base',
    after: (patch: string) => `the base with patch ${patch}`,
    front: 'the front',
  },
  step: (name: string, step: string, taken: string) => [step, name, taken].filter(Boolean).join(', '),
  page: (number: number, of: number) => `${number} / ${of}`,
  unknown: 'not told',
} as const;
