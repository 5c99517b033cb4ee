import type { Photo } from '../../photo/index.ts';
import { shrinkPhoto } from '../shrink.ts';

/** The photograph at about a megapixel, as three opponent planes, 0..255 each about its own zero. */
export interface WorkPicture {
  width: number;
  height: number;
  /** Photo px per work px: photo = work * step. */
  step: number;
  /** Lightness (r + 2g + b) / 4, then r - g and b - (r + g) / 2; smoothed by a 3x3 binomial. */
  planes: readonly [Float32Array, Float32Array, Float32Array];
}

/** Long side at most this many px. Lines are found here; they are fitted in the photograph itself. */
const longestPx = 1200;

export function workPicture(photo: Photo): WorkPicture {
  const long = Math.max(photo.width, photo.height);
  const level = Math.max(0, Math.ceil(Math.log2(long / longestPx)));
  const small = shrinkPhoto(photo, level);
  const n = small.width * small.height;
  const planes = [new Float32Array(n), new Float32Array(n), new Float32Array(n)] as const;
  for (let i = 0; i < n; i++) {
    const pixel = small.pixels[i];
    const r = pixel & 255;
    const g = (pixel >>> 8) & 255;
    const b = (pixel >>> 16) & 255;
    planes[0][i] = (r + 2 * g + b) / 4;
    planes[1][i] = r - g;
    planes[2][i] = b - (r + g) / 2;
  }
  for (const plane of planes) smooth(plane, small.width, small.height);
  return { width: small.width, height: small.height, step: small.step, planes };
}

/** 3x3 binomial (1 2 1) in place; the outermost pixels stay. */
function smooth(p: Float32Array, width: number, height: number): void {
  for (let y = 0; y < height; y++) {
    let before = p[y * width];
    for (let x = 1, i = y * width + 1; x < width - 1; x++, i++) {
      const own = p[i];
      p[i] = (before + 2 * own + p[i + 1]) / 4;
      before = own;
    }
  }
  const row = Float32Array.from(p.subarray(0, width));
  for (let y = 1; y < height - 1; y++) {
    for (let x = 0, i = y * width; x < width; x++, i++) {
      const own = p[i];
      p[i] = (row[x] + 2 * own + p[i + width]) / 4;
      row[x] = own;
    }
  }
}

/** The same picture at a quarter of the scale, by 4x4 means: wood grain, weave and print melt away, sheets stay. */
export function quarter(work: WorkPicture): WorkPicture {
  const width = work.width >> 2;
  const height = work.height >> 2;
  const planes = work.planes.map((p) => {
    const out = new Float32Array(width * height);
    for (let y = 0; y < height * 4; y++) {
      const row = (y >> 2) * width;
      for (let x = 0, i = y * work.width; x < width * 4; x++, i++) out[row + (x >> 2)] += p[i] / 16;
    }
    smooth(out, width, height);
    return out;
  });
  return { width, height, step: work.step * 4, planes: planes as unknown as WorkPicture['planes'] };
}
