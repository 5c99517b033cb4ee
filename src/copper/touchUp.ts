import type { TouchUp } from '../card/index.ts';
import type { Box, Point } from '../geometry/index.ts';
import type { CopperMask } from './types.ts';

/** Place in mm that a brush stroke can change: its path with half the brush round it. */
export function strokeBox({ path, width_mm }: TouchUp): Box {
  const half = width_mm / 2;
  return {
    x0: Math.min(...path.map(([x]) => x)) - half,
    y0: Math.min(...path.map(([, y]) => y)) - half,
    x1: Math.max(...path.map(([x]) => x)) + half,
    y1: Math.max(...path.map(([, y]) => y)) + half,
  };
}

/**
 * Paints one stroke into the mask itself: what a hand says stands above what the picture says, so strict, filled and
 * likelihood all follow it.
 * @returns the box in mm that has changed at most
 */
export function paintStroke(mask: CopperMask, stroke: TouchUp): Box {
  const value = stroke.do === 'add' ? 1 : 0;
  forEachPixel(mask, stroke, (k) => {
    mask.filled[k] = value;
    mask.strict[k] = value;
    mask.likelihood[k] = value * 255;
  });
  return strokeBox(stroke);
}

/** A mask with all strokes painted in their order; the one given stays as it is. */
export function applyTouchUp(mask: CopperMask, strokes: readonly TouchUp[]): CopperMask {
  if (!strokes.length) return mask;
  const touched: CopperMask = {
    ...mask,
    filled: mask.filled.slice(),
    strict: mask.strict.slice(),
    likelihood: mask.likelihood.slice(),
  };
  for (const stroke of strokes) paintStroke(touched, stroke);
  return touched;
}

/**
 * Puts a box of a painted mask back to what it was before any stroke, then paints the given strokes there again: undo.
 * @param painted is changed in place
 * @param original the mask before any stroke
 */
export function repaint(
  painted: CopperMask,
  original: CopperMask,
  box: Box,
  strokes: readonly TouchUp[],
): void {
  const { width, height, pxPerMm, originMm } = painted;
  const i0 = Math.max(0, Math.floor((box.x0 - originMm[0]) * pxPerMm));
  const i1 = Math.min(width, Math.ceil((box.x1 - originMm[0]) * pxPerMm) + 1);
  const j0 = Math.max(0, Math.floor((box.y0 - originMm[1]) * pxPerMm));
  const j1 = Math.min(height, Math.ceil((box.y1 - originMm[1]) * pxPerMm) + 1);
  for (let j = j0; j < j1; j++) {
    for (const part of ['filled', 'strict', 'likelihood'] as const) {
      painted[part].set(original[part].subarray(j * width + i0, j * width + i1), j * width + i0);
    }
  }
  for (const stroke of strokes) paintStroke(painted, stroke);
}

/** Calls back for each pixel whose centre lies within half the brush's width of the path. */
function forEachPixel(mask: CopperMask, { path, width_mm }: TouchUp, call: (k: number) => void): void {
  const { width, height, pxPerMm, originMm } = mask;
  const radius = (width_mm / 2) * pxPerMm;
  const px = path.map(([x, y]): Point => [(x - originMm[0]) * pxPerMm, (y - originMm[1]) * pxPerMm]);
  for (let n = 0; n < px.length; n++) {
    const [ax, ay] = px[Math.max(0, n - 1)];
    const [bx, by] = px[n];
    const i0 = Math.max(0, Math.floor(Math.min(ax, bx) - radius));
    const i1 = Math.min(width - 1, Math.ceil(Math.max(ax, bx) + radius));
    const j0 = Math.max(0, Math.floor(Math.min(ay, by) - radius));
    const j1 = Math.min(height - 1, Math.ceil(Math.max(ay, by) + radius));
    for (let j = j0; j <= j1; j++) {
      for (let i = i0; i <= i1; i++) {
        if (squaredToSegment(i + 0.5, j + 0.5, ax, ay, bx, by) <= radius * radius) call(j * width + i);
      }
    }
  }
}

function squaredToSegment(x: number, y: number, ax: number, ay: number, bx: number, by: number): number {
  const [dx, dy] = [bx - ax, by - ay];
  const length = dx * dx + dy * dy;
  const t = length ? Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / length)) : 0;
  return (x - ax - t * dx) ** 2 + (y - ay - t * dy) ** 2;
}
