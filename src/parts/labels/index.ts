export { attachLabels, type LabelProposal } from './attachLabels.ts';
export { readLabels, type Reading, type ReadLabels } from './readLabels.ts';
export type { KnownNames, Label, LabelMeaning } from './types.ts';
export { readCellMarking } from './cellMarking.ts';
export type { Disc } from './disc.ts';
