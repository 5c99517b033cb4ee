const mb = (bytes: number) => `${Math.ceil(bytes / 1e6)} MB`;

/** What is said of reading the print on a sheet. */
export const labelWords = {
  heading: 'Written on the sheet',
  lead: (bytes: number) =>
    `Plan tag, lamp names, + signs and the type on the cell can be read off the photograph. The reader (${mb(bytes)}) is fetched once.`,
  read: 'Read the labels',
  again: 'Read again',
  reading: (percent: number) => `Reading the labels: ${percent} %`,
  stop: 'Stop reading',
  nothing: 'Nothing was read that helps here.',
  agrees: (count: number) =>
    count === 1 ? '1 label agrees with the card.' : `${count} labels agree with the card.`,
  sure: (percent: number) => `read ${percent} % sure`,
  nameLamp: (lamp: string, as: string) => `Call lamp ${lamp} by its label, ${as}`,
  nameAll: (count: number) => `Call all ${count} lamps by their labels`,
  ask: (as: string) => `Which lamp is ${as}? Its label is not clearly one lamp’s.`,
  askLamp: (lamp: string) => `Lamp ${lamp}`,
  flip: (lamp: string) => `Swap + and − of lamp ${lamp}: a + stands by its other end`,
  cell: (kind: string) => `Make the cell a ${kind}`,
  marked: (kind: string) => `The cell is marked ${kind}: take that, + face up`,
  title: (title: string) => `Title the card “${title}”`,
  tagAgrees: (tag: string) => `Printed for the plan at hand: ${tag}.`,
  tagOther: (tag: string) =>
    `Printed for another plan: ${tag}. The plan at hand has another tag, or there is none.`,
  tagSize: (width: string, height: string) => `Take the printed size, ${width} x ${height}`,
  tagPlan: (title: string) => `Take the plan of “${title}”, which has this tag`,
  upsideDown: 'The writing stands on its head: the sheet lies upside down.',
  turn: 'Turn the sheet by half',
};
