import type { Bow } from './bow.ts';
import type { Homography, Point, Quad } from '../geometry/index.ts';

/** Where the base lies in a photograph. */
export interface Outline {
  /** Corners in upright picture pixels, sub-pixel, order top-left, top-right, bottom-right, bottom-left of the base. */
  cornersPx: Quad;
  /** 0..1, calibrated: the chance that every corner is within 1 mm. Below 0.5 the handles are shown instead. */
  certainty: number;
  /** The certainty by the sides alone, where what lies on the sheet speaks against them. */
  alone?: number;
  /** Radial distortion x_d = x(1 + k1 r^2), r in units of half the picture's diagonal from its centre; 0 when edges are straight. */
  k1: number;
  /** Largest distance of the fitted edges from the seen ones, mm; tells a bowed or creased sheet. */
  residualMm: number;
  /** How the sides bow where the sheet is not flat; absent where they are straight. */
  bow?: Bow;
}

/**
 * The squared-up picture: constant scale, the base's own frame.
 * Pixel (i, j) covers mm x in originMm[0] + [i, i+1)/pxPerMm, y in originMm[1] + [j, j+1)/pxPerMm.
 */
export interface SquaredSheet {
  width: number;
  height: number;
  pxPerMm: number;
  /** mm of the picture's top-left pixel corner; negative where a margin beyond the base is taken. */
  originMm: Point;
  /** Size of the base itself, mm. */
  baseMm: { width: number; height: number };
  /** Row-major RGB, 8 bits, width*height*3. */
  rgb: Uint8Array;
  /** 1 where the photograph showed that place, 0 outside the picture; absent when all was shown. */
  seen?: Uint8Array;
  /** mm to upright picture pixels (undistorted), of the frame that the corners span: `bent` comes first where there is a bow. */
  toPhoto: Homography;
  bow?: Bow;
  /** Photo pixels per mm on the base, least over its area: what the photograph can resolve. */
  photoPxPerMm: number;
}
