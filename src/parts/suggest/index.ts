export { suggestParts } from './suggestParts.ts';
export { openSuggestions } from './openSuggestions.ts';
export { scaleByCell } from './scaleByCell.ts';
export type { CellScale } from './scaleByCell.ts';
export type { Suggested, SuggestedCell, SuggestedLamp } from './types.ts';
