import type { Homography, Point } from '../geometry/index.ts';
import type { Photo } from '../photo/index.ts';
import type { Lens } from './lens.ts';
import { shrinkPhoto } from './shrink.ts';
import type { Shrunk } from './shrink.ts';

interface Frame {
  width: number;
  height: number;
  pxPerMm: number;
  originMm: Point;
}

/** What the sides of a bowed sheet stray at each column (top, bottom: mm along y) and row (left, right: mm along x). */
export interface Bends {
  /** Share 0..1 of the base's width at each column, of its height at each row. */
  u: Float64Array;
  v: Float64Array;
  top: Float64Array;
  bottom: Float64Array;
  left: Float64Array;
  right: Float64Array;
}

interface MapParts {
  m: Homography;
  lens: Lens;
  bend?: Bends;
}

/**
 * Fills a squared picture. Where the photograph has more pixels than the target it is first halved by area means,
 * then read by bilinear interpolation (two samples a pixel, on its diagonal, while more than 1.25 source pixels fall on one).
 * @param toPx mm to picture px, lens and all; used for the window and the scale
 * @param parts the same map in parts, for the inner loop
 * @returns rgb, and `seen` (1 = inside the photograph) where a part lies outside
 */
export function resample(photo: Photo, frame: Frame, toPx: (mm: Point) => Point, parts: MapParts) {
  const { box, ratio } = windowOf(frame, toPx);
  const source = shrinkPhoto(photo, Math.max(0, Math.floor(Math.log2(ratio))));
  const samples = ratio / source.step > 1.25 ? 2 : 1;
  const rgb = new Uint8Array(frame.width * frame.height * 3);
  const inside =
    box.x0 >= 0 && box.y0 >= 0 && box.x1 <= photo.width && box.y1 <= photo.height
      ? undefined
      : new Uint8Array(frame.width * frame.height);
  fill(rgb, inside, photo, frame, source, parts, samples);
  return { rgb, seen: inside };
}

/** The part of the photograph that is needed, and source px per target px (the median of the four corners). */
function windowOf(frame: Frame, toPx: (mm: Point) => Point) {
  const { width, height, pxPerMm, originMm } = frame;
  const xs: number[] = [];
  const ys: number[] = [];
  for (let k = 0; k <= 8; k++) {
    for (const [i, j] of [
      [(width * k) / 8, 0],
      [(width * k) / 8, height],
      [0, (height * k) / 8],
      [width, (height * k) / 8],
    ]) {
      const p = toPx([originMm[0] + i / pxPerMm, originMm[1] + j / pxPerMm]);
      xs.push(p[0]);
      ys.push(p[1]);
    }
  }
  const box = {
    x0: Math.min(...xs) - 2,
    y0: Math.min(...ys) - 2,
    x1: Math.max(...xs) + 2,
    y1: Math.max(...ys) + 2,
  };
  const mid: Point = [originMm[0] + width / pxPerMm / 2, originMm[1] + height / pxPerMm / 2];
  const a = toPx(mid);
  const b = toPx([mid[0] + 1 / pxPerMm, mid[1]]);
  const c = toPx([mid[0], mid[1] + 1 / pxPerMm]);
  const ratio = Math.sqrt(Math.abs((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])));
  return { box, ratio };
}

/** Red and blue of a pixel together: each has room above it for a sum of 256 shares. */
const redBlue = 0xff00ff;

/** The inner loop: homography, lens and bilinear reading (in 256ths) in one, without allocation. */
function fill(
  rgb: Uint8Array,
  seen: Uint8Array | undefined,
  photo: Photo,
  frame: Frame,
  { pixels, width: sw, height: sh, step }: Shrunk,
  { m, lens, bend }: MapParts,
  samples: number,
): void {
  const [cx, cy] = lens.centre;
  const k = lens.k1 / (lens.half * lens.half);
  const stepMm = 1 / frame.pxPerMm;
  const offsets = Float64Array.from({ length: samples }, (_, n) => (n + 0.5) / samples);
  const perStep = 1 / step;
  const mostU = sw - 1.001;
  const mostV = sh - 1.001;
  for (let j = 0, o = 0; j < frame.height; j++) {
    for (let i = 0; i < frame.width; i++, o += 3) {
      let rb = 0;
      let green = 0;
      let hits = 0;
      let x0 = frame.originMm[0];
      let y0 = frame.originMm[1];
      if (bend) {
        x0 += (1 - bend.u[i]) * bend.left[j] + bend.u[i] * bend.right[j];
        y0 += (1 - bend.v[j]) * bend.top[i] + bend.v[j] * bend.bottom[i];
      }
      for (let n = 0; n < samples; n++) {
        const x = x0 + (i + offsets[n]) * stepMm;
        const y = y0 + (j + offsets[samples - 1 - n]) * stepMm;
        const w = 1 / (m[6] * x + m[7] * y + m[8]);
        let px = (m[0] * x + m[1] * y + m[2]) * w;
        let py = (m[3] * x + m[4] * y + m[5]) * w;
        if (k !== 0) {
          const dx = px - cx;
          const dy = py - cy;
          const bend = 1 + k * (dx * dx + dy * dy);
          px = cx + dx * bend;
          py = cy + dy * bend;
        }
        if (px < 0 || py < 0 || px > photo.width || py > photo.height) continue;
        hits++;
        const u = Math.min(mostU, Math.max(0, px * perStep - 0.5));
        const v = Math.min(mostV, Math.max(0, py * perStep - 0.5));
        const in256u = (u * 256) | 0;
        const in256v = (v * 256) | 0;
        const fu = in256u & 255;
        const fv = in256v & 255;
        const w11 = (fu * fv) >> 8;
        const w10 = fv - w11;
        const w01 = fu - w11;
        const w00 = 256 - fu - w10;
        const p = (in256v >> 8) * sw + (in256u >> 8);
        const a = pixels[p];
        const b = pixels[p + 1];
        const c = pixels[p + sw];
        const d = pixels[p + sw + 1];
        // Cut to 32 bits all along, so that whole numbers are reckoned with.
        const left = (Math.imul(a & redBlue, w00) + Math.imul(c & redBlue, w10)) | 0;
        const right = (Math.imul(b & redBlue, w01) + Math.imul(d & redBlue, w11)) | 0;
        rb += ((left + right + 0x800080) >>> 8) & redBlue;
        green +=
          Math.imul((a >>> 8) & 255, w00) +
          Math.imul((b >>> 8) & 255, w01) +
          Math.imul((c >>> 8) & 255, w10) +
          Math.imul((d >>> 8) & 255, w11);
      }
      if (hits === 0) continue;
      rgb[o] = (rb & 0xffff) / hits + 0.5;
      rgb[o + 1] = green / (256 * hits) + 0.5;
      rgb[o + 2] = (rb >>> 16) / hits + 0.5;
      if (seen) seen[o / 3] = 1;
    }
  }
}
