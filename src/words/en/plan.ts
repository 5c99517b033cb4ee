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
};
