export type { CentreLine, Clearance, Crossing, Neck, Piece, StripEnd, Traced } from './types.ts';
