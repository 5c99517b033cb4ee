export { attachLabels, type LabelProposal } from './attachLabels.ts';
export { readLabels, type ReadSheet } from './readLabels.ts';
export type { Label, LabelMeaning } from './types.ts';
