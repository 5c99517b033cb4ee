/**
 * sRGB to CIE L*a*b* by tables.
 * @source sRGB transfer curve and matrix: IEC 61966-2-1; L*a*b*: CIE 15, white D65.
 */

/** Linear light of each 8-bit code, 0..1 (IEC 61966-2-1). */
export const linearOf = Float64Array.from({ length: 256 }, (_, code) => {
  const v = code / 255;
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
});

const white = [0.95047, 1, 1.08883] as const;
const rows = [
  [0.4124, 0.3576, 0.1805],
  [0.2126, 0.7152, 0.0722],
  [0.0193, 0.1192, 0.9505],
] as const;

/** The CIE's f(t): a cube root with a straight toe. */
export const cieF = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : (t * (24389 / 27) + 16) / 116);

const steps = 32768;
const fTable = Float32Array.from({ length: steps + 2 }, (_, i) => cieF((i / steps) * 1.02));
const toStep = steps / 1.02;

/** Contribution of each channel's code to X/Xn, Y/Yn, Z/Zn, scaled to steps of the table: [row][channel][code]. */
const parts = rows.map((row, r) =>
  row.map((weight) => Float32Array.from(linearOf, (v) => (v * weight * toStep) / white[r])),
);

const [[xR, xG, xB], [yR, yG, yB], [zR, zG, zB]] = parts;

/** Cube-root planes of a picture: CIE f of X/Xn, Y/Yn, Z/Zn. L* = 116 fy - 16, a* = 500 (fx - fy), b* = 200 (fy - fz). */
export interface RootPlanes {
  width: number;
  height: number;
  fx: Float32Array;
  fy: Float32Array;
  fz: Float32Array;
}

/**
 * @param rgb row-major RGB, 8 bits, width*height*3
 * @param shrink side of the square of pixels that is averaged into one, 1 = none; a remainder at the edges is dropped
 */
export function rootPlanes(rgb: Uint8Array, width: number, height: number, shrink = 1): RootPlanes {
  const w = Math.floor(width / shrink);
  const h = Math.floor(height / shrink);
  const fx = new Float32Array(w * h);
  const fy = new Float32Array(w * h);
  const fz = new Float32Array(w * h);
  const share = 1 / (shrink * shrink);
  for (let j = 0, k = 0; j < h; j++) {
    for (let i = 0; i < w; i++, k++) {
      let x = 0;
      let y = 0;
      let z = 0;
      for (let v = 0; v < shrink; v++) {
        let p = ((j * shrink + v) * width + i * shrink) * 3;
        for (let u = 0; u < shrink; u++, p += 3) {
          const r = rgb[p];
          const g = rgb[p + 1];
          const b = rgb[p + 2];
          x += xR[r] + xG[g] + xB[b];
          y += yR[r] + yG[g] + yB[b];
          z += zR[r] + zG[g] + zB[b];
        }
      }
      fx[k] = fTable[(x * share + 0.5) | 0];
      fy[k] = fTable[(y * share + 0.5) | 0];
      fz[k] = fTable[(z * share + 0.5) | 0];
    }
  }
  return { width: w, height: h, fx, fy, fz };
}

/** CIE f of X/Xn, Y/Yn, Z/Zn of the pixel whose red stands at `p`, by table. */
export function rootOf(rgb: Uint8Array, p: number, into: Float32Array): void {
  const r = rgb[p];
  const g = rgb[p + 1];
  const b = rgb[p + 2];
  into[0] = fTable[(xR[r] + xG[g] + xB[b] + 0.5) | 0];
  into[1] = fTable[(yR[r] + yG[g] + yB[b] + 0.5) | 0];
  into[2] = fTable[(zR[r] + zG[g] + zB[b] + 0.5) | 0];
}

/** L*a*b* (D65) of one 8-bit sRGB colour, without tables' rounding. */
export function labOf(r: number, g: number, b: number): [L: number, a: number, b: number] {
  const light = [linearOf[r], linearOf[g], linearOf[b]];
  const [fx, fy, fz] = rows.map((row, k) =>
    cieF((row[0] * light[0] + row[1] * light[1] + row[2] * light[2]) / white[k]),
  );
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}
