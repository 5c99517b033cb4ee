// decodeNode.ts (Node) and decodeBrowser.ts (page, worker) are imported by their own names, so neither reaches the other's side.
export { checkFile, checkSize, largestMegapixels, leastSidePx } from './bounds.ts';
export { sniff } from './sniff.ts';
export type { Sniffed } from './sniff.ts';
export type { Photo } from './types.ts';
export { measurePhoto, smallestGapMm } from './measurePhoto.ts';
export type { PhotoMeasures } from './measurePhoto.ts';
