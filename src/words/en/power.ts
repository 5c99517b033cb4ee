/** What is said about currents, brightness and the cell. */
export const powerWords = {
  twice: (id: string) => `Two parts of the circuit are both called ${id}. Give each its own name.`,
  badOhm: (id: string, ohm: number) =>
    `${id} has a resistance of ${ohm} ohm, which nothing can have. Use 0 or more.`,
  badVolt: (id: string, volt: number) => `The cell ${id} has ${volt} V. Use a voltage from 0 to 100 V.`,
  badCellOhm: (id: string, ohm: number) =>
    `The cell ${id} has an internal resistance of ${ohm} ohm, so a short would have no answer. Use 0.001 ohm or more.`,
  badLamp: (id: string) => `The curve of lamp ${id} is impossible. State its voltage and current again.`,
  noConvergence: (steps: number, part: string) =>
    `The currents did not settle in ${steps} steps; the part that will not balance is ${part}. Check its values.`,

  afloat: (state: string, lamps: string) =>
    `${state}: the copper under ${lamps} reaches no face of the cell, so nothing can flow there.`,
  cellShorted: (state: string) =>
    `${state}: both faces of the cell are on one piece of copper. It gets hot: take it out at once.`,
  lampOnOneNode: (state: string, lamp: string) =>
    `${state}: both pads of ${lamp} are on one piece of copper, so no voltage is left for it.`,

  noCell: 'No cell is placed, so nothing can light yet. Place it to see currents.',
  cell: (kind: string, percent: number, volt: string, ohm: string) =>
    `${kind} with ${percent} % of its charge: ${volt} V behind ${ohm} ohm.`,
  nothingLit: 'No lamp lights in any state.',
  load: {
    none: () => '',
    within: (state: string, mA: string, kind: string) =>
      `At most ${mA} mA is drawn (${state}): a ${kind} gives that for hours.`,
    'over-continuous': (state: string, mA: string, kind: string, continuous: number, pulse: number) =>
      `At most ${mA} mA is drawn (${state}). A ${kind} is made for ${continuous} mA at length and ${pulse} mA in short pulses: good for presses, not for leaving lit.`,
    'over-pulse': (state: string, mA: string, kind: string, continuous: number, pulse: number) =>
      `At most ${mA} mA is drawn (${state}), more than the ${pulse} mA that a ${kind} gives in short pulses (${continuous} mA at length). It sags within seconds and wears out fast.`,
    shorted: (state: string, mA: string) =>
      `${state}: the cell is shorted and gives ${mA} mA at once. It gets hot and is ruined: take it out.`,
  },
  even: (state: string, ratio: string) =>
    `The lamps are even (${state}): the brightest has ${ratio} times the current of the dimmest.`,
  uneven: (state: string, brightest: string, dimmest: string, ratio: string) =>
    `${state}: ${brightest} has ${ratio} times the current of ${dimmest}.`,
  robbed: (state: string, robbers: string, robbed: string, volt: string) =>
    `${state}: ${robbers} rob ${robbed}. Lamps of the red family light at about 2 V and hold the cell down to ${volt} V; white, blue and true green need about 2.8 V and stay dark.`,
  robbedByOne: (state: string, robber: string, robbed: string, volt: string) =>
    `${state}: ${robber} robs ${robbed}. A lamp of the red family lights at about 2 V and holds the cell down to ${volt} V; white, blue and true green need about 2.8 V and stay dark.`,
  runTime: (state: string, lit: string, bright: string, presses: string) =>
    `Held down (${state}), a fresh cell keeps what lights lit for about ${lit}, bright for about ${bright}; that is some ${presses} presses of five seconds. An estimate: cells differ by half.`,
  hours: (hours: string) => `${hours} hours`,
  endures: 'What lights from a fresh cell lights until the cell is empty.',
  fadesAt: (percent: number, lamps: string) =>
    `With ${percent} % of the charge left, ${lamps} ${lamps.includes(',') ? 'are' : 'is'} dark.`,
  spread: (lamp: string, low: string, high: string) =>
    `Luck with lamps and joints: ${lamp} gets between ${low} and ${high} mA in nine cards of ten.`,
  darkShare: (lamp: string, percent: string) => `In ${percent} % of such cards ${lamp} stays dark.`,

  bandColours: {
    black: 'black',
    brown: 'brown',
    red: 'red',
    orange: 'orange',
    yellow: 'yellow',
    green: 'green',
    blue: 'blue',
    violet: 'violet',
    grey: 'grey',
    white: 'white',
    gold: 'gold',
  },
  advice: {
    resistor: (lamps: string, ohm: number, bands: string, ratio: string, mA: string) =>
      `Put ${ohm} ohm (${bands}) in line with ${lamps}: then the lamps are within a factor of ${ratio} of one another, at about ${mA} mA.`,
    'split-colours': (low: string, high: string) =>
      `Or keep colours apart: ${low} on one cell, ${high} on another.`,
    'fewer-lamps': (state: string, now: number, most: number) =>
      `${now} lamps at once (${state}) are much for one cell: ${most} would stay bright within what it gives. Let them light in turn, or take fewer.`,
    'second-cell': (mANow: string, mAThen: string) =>
      `A second cell of the same kind, new and side by side (+ to +), lifts the dimmest lamp from ${mANow} to ${mAThen} mA.`,
    'limit-current': (lamps: string, mA: string, ohm: number, bands: string, mAThen: string) =>
      `${lamps} would draw ${mA} mA each. Put ${ohm} ohm (${bands}) in line with each: ${mAThen} mA is bright and lets the cell last.`,
    'which-green': (lamps: string) =>
      `Green is reckoned as true green (about 3 V) for ${lamps}. Yellowish green is a 2 V lamp: if yours is, choose yellow-green.`,
    'cell-too-low': (volt: string, lamps: string) =>
      `One cell of ${volt} V cannot light ${lamps}. Use a 3 V lithium cell.`,
  },

  jointNames: {
    seam: (place: string) => `the seam at ${place}`,
    contact: (id: string) => `contact ${id}`,
    'lamp-leg': (id: string) => `the legs of ${id}`,
    legs: (ids: string) => `the legs of ${ids}, each for its own lamp`,
    'cell-face': (face: string) => `the ${face} face of the cell`,
  },
  jointNeed: (joint: string, dims: string, dimOhm: string, darkOhm: string) =>
    `${joint}: above ${dimOhm} ohm ${dims} will be dim, above ${darkOhm} ohm dark.`,
  jointsFirst: 'Joints to press first, the most sensitive at the head:',

  tapeLesson: (length: string, width: string, ohm: string, splitOhm: string, percent: string) =>
    `Why the width of tape does not matter: all the tape of this card end to end (${length}, ${width} wide) is ${ohm} ohm. Split down its middle it is ${splitOhm} ohm, and no lamp changes by more than ${percent} %.`,
  contactLesson:
    'Why joints do: foil pressed on foil is a tenth of an ohm, foil merely resting on foil 1 to 10 ohm, foil on ordinary glue no contact at all. One poor joint outdoes all the tape many times over.',
  more: (count: number) => `${count} more`,
  and: (names: string[]) =>
    names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`,
} as const;
