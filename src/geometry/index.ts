export type { Box, Homography, Point, Polygon, Quad, Ring, Segment } from './types.ts';
