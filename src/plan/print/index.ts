export { cutList } from './cutList.ts';
export type { CutLine, CutList } from './cutList.ts';
export { printPlan } from './printPlan.ts';
export { readTag, sheetTag } from './tag.ts';
export type { ReadTag } from './tag.ts';
export type { PrintFonts, PrintOptions, PrintPaper } from './types.ts';
