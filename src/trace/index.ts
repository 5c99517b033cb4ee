export type { BlindMap, CentreLine, Clearance, Crossing, Neck, Piece, StripEnd, Traced } from './types.ts';
export { isBlind } from './blind.ts';
export { lampSees } from './lampLook.ts';
export { isStrange, isUnseen } from './strange.ts';
export { trace } from './trace.ts';
export { retrace } from './retrace.ts';
