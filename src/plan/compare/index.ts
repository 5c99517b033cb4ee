export type { Bitmap, PixelBox } from './bitmap.ts';
export { compareMasks } from './compareMasks.ts';
export type { ComparedMasks, CompareOptions, MaskFault } from './compareMasks.ts';
export { readConductor } from './conductor.ts';
export type { ConductorSide, ReadConductor } from './conductor.ts';
export type { MaskFaultKind } from './ringTopology.ts';
