import type { CopperMask } from '../../src/copper/index.ts';

/** A mask drawn by hand for a test: rectangles in mm, 10 px/mm. */
export function maskOf(
  widthMm: number,
  heightMm: number,
  rectangles: readonly (readonly [x0: number, y0: number, x1: number, y1: number])[],
): CopperMask {
  const width = Math.round(widthMm * 10);
  const height = Math.round(heightMm * 10);
  const filled = new Uint8Array(width * height);
  for (const [x0, y0, x1, y1] of rectangles) {
    for (let j = Math.round(y0 * 10); j < Math.round(y1 * 10); j++) {
      filled.fill(1, j * width + Math.round(x0 * 10), j * width + Math.round(x1 * 10));
    }
  }
  return given(filled, width, height);
}

export const given = (filled: Uint8Array, width: number, height: number): CopperMask => ({
  width,
  height,
  pxPerMm: 10,
  originMm: [0, 0],
  baseMm: { width: width / 10, height: height / 10 },
  filled,
  strict: filled.slice(),
  likelihood: filled.map((v) => 255 * v),
  readable: 1,
  troubles: [],
  by: 'given',
});

/** Turned by a quarter, clockwise. */
export function turned({ filled, width, height }: CopperMask): CopperMask {
  const out = new Uint8Array(filled.length);
  for (let j = 0; j < height; j++) {
    for (let i = 0; i < width; i++) out[i * height + height - 1 - j] = filled[j * width + i];
  }
  return given(out, height, width);
}

/** Left for right. */
export function mirrored({ filled, width, height }: CopperMask): CopperMask {
  return given(
    filled.map((_, k) => filled[k - (k % width) + width - 1 - (k % width)]),
    width,
    height,
  );
}
