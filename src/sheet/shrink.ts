/** A window of a picture at 1/2^level of its scale. Pixel (i, j) covers picture px x0 + [i, i+1) * step. */
export interface Shrunk {
  width: number;
  height: number;
  x0: number;
  y0: number;
  step: number;
  channels: 3 | 4;
  data: Uint8Array | Uint8ClampedArray;
}

/**
 * Halves a window of a picture `level` times by 2x2 means: the area sampling that keeps fine lines from aliasing.
 * @param source row-major, `channels` bytes a pixel
 * @param box px, clipped to the picture; ignored at level 0, where the source itself is returned
 */
export function shrinkWindow(
  source: Shrunk,
  box: { x0: number; y0: number; x1: number; y1: number },
  level: number,
): Shrunk {
  let from = source;
  for (let n = 0; n < level; n++) from = halve(from, n === 0 ? box : undefined);
  return from;
}

function halve(s: Shrunk, box?: { x0: number; y0: number; x1: number; y1: number }): Shrunk {
  const left = box ? clamp(Math.floor(box.x0), 0, s.width - 2) : 0;
  const top = box ? clamp(Math.floor(box.y0), 0, s.height - 2) : 0;
  const right = box ? clamp(Math.ceil(box.x1), left + 2, s.width) : s.width;
  const bottom = box ? clamp(Math.ceil(box.y1), top + 2, s.height) : s.height;
  const width = Math.max(1, (right - left) >> 1);
  const height = Math.max(1, (bottom - top) >> 1);
  const c = s.channels;
  const data = new Uint8Array(width * height * 3);
  const d = s.data;
  let o = 0;
  for (let j = 0; j < height; j++) {
    let a = ((top + 2 * j) * s.width + left) * c;
    let b = a + (top + 2 * j + 1 < s.height ? s.width * c : 0);
    for (let i = 0; i < width; i++) {
      data[o] = (d[a] + d[a + c] + d[b] + d[b + c] + 2) >> 2;
      data[o + 1] = (d[a + 1] + d[a + c + 1] + d[b + 1] + d[b + c + 1] + 2) >> 2;
      data[o + 2] = (d[a + 2] + d[a + c + 2] + d[b + 2] + d[b + c + 2] + 2) >> 2;
      a += 2 * c;
      b += 2 * c;
      o += 3;
    }
  }
  return {
    width,
    height,
    x0: s.x0 + left * s.step,
    y0: s.y0 + top * s.step,
    step: s.step * 2,
    channels: 3,
    data,
  };
}

const clamp = (v: number, low: number, high: number) => Math.min(Math.max(v, low), Math.max(low, high));
