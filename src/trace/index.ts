export type { CentreLine, Clearance, Crossing, Neck, Piece, StripEnd, Traced } from './types.ts';
export { trace } from './trace.ts';
export { retrace } from './retrace.ts';
