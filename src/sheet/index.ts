export {
  applyHomography,
  composeHomographies,
  homographyFromQuad,
  homographyFromUnitSquare,
  invertHomography,
  scaleAt,
  turnCorners,
} from './homography.ts';
export { bent, bowOf } from './bow.ts';
export type { Bow } from './bow.ts';
export { distort, lensOf, undistort } from './lens.ts';
export type { Lens } from './lens.ts';
export { squareUp } from './squareUp.ts';
export type { SquareUpOptions } from './squareUp.ts';
export type { Outline, SquaredSheet } from './types.ts';
export { seeBow } from './seeBow.ts';
export { turnOutline } from './turnOutline.ts';
export { findOutline } from './outline/findOutline.ts';
export type { FindOptions } from './outline/findOutline.ts';
export { refineCorner } from './refineCorner.ts';
export { cellDiametersMm, checkScaleByCell } from './scaleCheck.ts';
export type { ScaleCheck } from './scaleCheck.ts';
export { inchSizes, isoSizes, isoToleranceMm, mmPerInch, nearestSize, sheetSizes } from './sizes.ts';
export type { SheetSize } from './sizes.ts';
export { findIdCard, idCardMm, measureBase } from './idCard.ts';
export type { IdCard } from './idCard.ts';
