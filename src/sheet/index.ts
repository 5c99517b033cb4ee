export {
  applyHomography,
  composeHomographies,
  homographyFromQuad,
  homographyFromUnitSquare,
  invertHomography,
  scaleAt,
  turnCorners,
} from './homography.ts';
export { distort, lensOf, undistort } from './lens.ts';
export type { Lens } from './lens.ts';
export { squareUp } from './squareUp.ts';
export type { SquareUpOptions } from './squareUp.ts';
export type { Outline, SquaredSheet } from './types.ts';
export { findOutline } from './outline/findOutline.ts';
