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
} as const;
