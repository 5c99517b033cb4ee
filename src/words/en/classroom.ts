/** What is said of many cards of one plan. */
export const classroomWords = {
  heading: 'Many cards of one plan',
  lead: (hasPlan: boolean) =>
    hasPlan
      ? 'Choose the photographs of all cards: each is checked against the plan and parts of the card at hand.'
      : 'The card at hand has no plan: each photograph is checked against its parts alone. Draw the plan first for more.',
  choose: 'Choose photographs',
  shoot: 'Take one more photograph',
  stop: 'Stop',
  goOn: 'Go on',
  print: 'Print a slip for each card',
  forget: 'Forget these cards',
  progress: (done: number, total: number) => `${done} of ${total} checked`,
  columns: { card: 'Card', verdict: 'Verdict', faults: 'To mend', check: 'To check' },
  waiting: 'waiting',
  couldNot: 'Could not be checked',
  tableLabel: 'Cards and their verdicts',
  slip: (card: string) => `Slip for ${card}`,
  nothing: 'Nothing stands against this card.',
  verdicts: {
    clear: 'Clear to glue',
    'clear-once-checked': 'Clear once checked',
    hold: 'Hold',
    none: 'Could not be checked',
  },
  counted: (verdict: string, cards: number) => `${verdict}: ${cards}`,
  commonest: (fault: string, cards: number, total: number) =>
    `Commonest fault: ${fault}, on ${cards} of ${total} cards.`,
  noFault: 'No fault holds any card.',
  notJournal: (path: string) =>
    `${path} is no journal of an earlier run. Give --journal a new file name, or the journal of the run to go on with.`,
  noJournal: (path: string) => `The journal ${path} cannot be written here.`,
  resumed: (done: number, total: number) => `${done} of ${total} were checked in an earlier run.`,
};
