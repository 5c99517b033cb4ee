/** The pipeline in order. The lint forbids an import from a later stage. */
export const stages = [
  'geometry',
  'words',
  'card',
  'engine',
  'photo',
  'sheet',
  'copper',
  'trace',
  'parts',
  'net',
  'power',
  'plan',
  'record',
  'check',
  'bench',
];
