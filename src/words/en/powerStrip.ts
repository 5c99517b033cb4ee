/** Words of the lamp strip beside the verdict. */
export const powerStripWords = {
  heading: 'Will it light, how evenly, how long',
  noLamps: 'Mark the lamps and the cell, and the currents are worked out here.',
  state: 'State',
  cellAge: 'Charge left in the cell',
  charge: (percent: number) => `${percent} %`,
  fresh: 'fresh',
  spent: 'nearly spent',
  strip: (state: string) => `Lamps in the state "${state}", drawn as bright as they would look`,
  lamp: (id: string, colour: string, look: string, mA: string) => `${id}, ${colour}: ${look}, ${mA}`,
  looks: { lit: 'lit', dim: 'dim', dark: 'dark' },
  mA: (mA: number) => (mA >= 0.005 ? `${mA.toFixed(mA < 1 ? 2 : 1)} mA` : 'no current'),
  tells: 'What to expect',
  advice: 'What to change',
  joints: 'Seams and contacts worth pressing first',
  lesson: 'Why contacts matter and tape does not',
  working: 'Working it out…',
};
