/** What the command line says. */
export const cliWords = {
  help: `foilproof: proof-read a copper-tape circuit from a photograph before it is glued

  foilproof check PHOTO... [--card CARD.json] [--json] [--mask FILE.png]
                           [--report FILE.html|.pdf|.svg] [--squared FILE.png]
                           [--again SECOND_SHOT] [--labels] [--summary] [--journal FILE] [--paper a4|letter]
  foilproof check --card CARD.json     the photographs of several sheets that the card names, together
  foilproof compare --built A.png --plan B.png [--px-per-mm N] [--json]
  foilproof power CARD.json [--json]
  foilproof plan CARD.json --print FILE.pdf [--paper a4|letter]

Every command takes --language en|de|fr and --units mm|inch.
PHOTO may be a folder. Exit status: 0 clear, 1 findings that hold, 2 could not check.`,
  unknownCommand: (name: string) =>
    `There is no command ${name}. The commands are check, compare, power and plan; foilproof --help shows them.`,
  unknownLanguage: (given: string, known: string) => `--language takes ${known}, not "${given}".`,
  unknownUnit: (given: string, known: string) => `--units takes ${known}, not "${given}".`,
  unknownOption: (command: string, option: string) =>
    `foilproof ${command} does not know ${option}; foilproof --help shows what it takes.`,
  optionNeedsValue: (option: string) => `The option ${option} needs a file name after it.`,
  againNeedsOne: '--again takes a second shot of one sheet: give one photograph with it.',
  noPhoto: 'foilproof check needs a photograph, several, or a folder of them.',
  noCard: (command: string) => `foilproof ${command} needs a card file.`,
  noFile: (path: string) => `There is no file ${path}.`,
  emptyFolder: (path: string) => `The folder ${path} holds no photograph (JPEG, PNG or WebP).`,
  noPlanPower: 'The card has no plan: every lamp is taken as fed straight from the cell.',
  badPaper: (name: string) => `--paper takes a4 or letter, not "${name}".`,
  noPrint: 'foilproof plan needs --print and the name of a PDF file to write.',
  badReport: (path: string) => `A report is written as .html, .pdf or .svg, not as ${path}.`,
  notPng: (option: string, path: string) => `${option} writes a PNG file, not ${path}.`,
  cannotWrite: (path: string) => `The file ${path} cannot be written here.`,
  noPlan: (path: string) => `${path} has no plan to print: no strips under "plan".`,
  outlineUnsure: (photo: string, certainty: string) =>
    `The base could not be made out for certain in ${photo} (certainty ${certainty}). Give its four corners as corners_px in the card, or photograph the whole sheet on a plain table.`,
  unreadable: (photo: string, why: string) => `The copper in ${photo} cannot be read: ${why}`,
  unexpected: (photo: string, message: string) => `${photo} could not be checked: ${message}`,
  verdict: { clear: 'Clear to glue', 'clear-once-checked': 'Clear once checked', hold: 'Hold' } as const,
  couldNot: 'Could not check',
  count: (holds: number, checks: number, notes: number) =>
    [
      holds > 0 ? `${holds} hold` : '',
      checks > 0 ? `${checks} to check by hand` : '',
      notes > 0 ? `${notes} worth knowing` : '',
    ]
      .filter(Boolean)
      .join(', '),
  labels: (count: number) =>
    count === 0
      ? 'No label was read off the sheet.'
      : count === 1
        ? '1 label read off the sheet:'
        : `${count} labels read off the sheet:`,
  sure: (certainty: string) => `certainty ${certainty}`,
  notSeen: 'A photograph cannot show:',
  checking: (done: number, total: number) => `${done} of ${total} checked`,
  stage: {
    decode: 'reading the photograph',
    square: 'squaring up',
    copper: 'looking for copper',
    trace: 'tracing',
    net: 'building nets',
    power: 'solving',
  } as const,
};
