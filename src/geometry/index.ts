export type { Box, Homography, Point, Polygon, Quad, Ring, Segment } from './types.ts';
export { insideRing } from './insideRing.ts';
export { middleOf } from './middleOf.ts';
export { mirrorAbout } from './mirror.ts';
export { scaleWithin } from './scaleWithin.ts';
