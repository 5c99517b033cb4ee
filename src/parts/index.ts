export { attach } from './attach.ts';
export { cellDiameterMm } from './cellFaces.ts';
export { contactPlace, sidesOf } from './contactSides.ts';
export { flapOver } from './flaps.ts';
export { nearPieces, pieceAt, type NearPiece } from './nearest.ts';
export type { Attached, NestPiece, PadPlace } from './types.ts';
