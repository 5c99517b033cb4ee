import type { Conditions } from './conditions.ts';
import type { Random } from './random.ts';

/** Lens blur, vignette, sensor noise, and the sRGB curve (IEC 61966-2-1). @returns RGB, 8 bits */
export function encodeSrgb(linear: Float32Array, c: Conditions, random: Random): Uint8Array {
  const soft = blur(linear, c.width, c.height, c.blurPx);
  const out = new Uint8Array(soft.length);
  const curve = srgbCurve();
  const cx = c.width / 2;
  const cy = c.height / 2;
  for (let at = 0; at < c.width * c.height; at++) {
    const r2 = (((at % c.width) - cx) ** 2 + (Math.floor(at / c.width) - cy) ** 2) / (cx * cx + cy * cy);
    const vignette = 0.86 * (1 - 0.18 * r2);
    // A sum of three uniforms is near enough to normal for sensor noise, and quick.
    const grey = random.next() + random.next() + random.next() - 1.5;
    for (let k = 0; k < 3; k++) {
      const v = soft[3 * at + k] * vignette;
      const own = random.next() - 0.5;
      const noisy = v + c.noise * (1.6 * grey + 1.2 * own) * Math.sqrt(0.12 + v);
      out[3 * at + k] = curve[Math.min(4095, Math.max(0, Math.round(noisy * 4095)))];
    }
  }
  return out;
}

function srgbCurve(): Uint8Array {
  const curve = new Uint8Array(4096);
  for (let i = 0; i < 4096; i++) {
    const v = i / 4095;
    const e = v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055;
    curve[i] = Math.round(255 * e);
  }
  return curve;
}

/** Separable three-tap kernel of the deviation asked for (up to about 1 px). */
function blur(rgb: Float32Array, width: number, height: number, sigma: number): Float32Array {
  const side = Math.exp(-1 / (2 * sigma * sigma));
  const mid = 1 / (1 + 2 * side);
  const wing = side * mid;
  const pass = (from: Float32Array, step: number, count: number, lines: (n: number) => number, n: number) => {
    const to = new Float32Array(from.length);
    for (let line = 0; line < n; line++) {
      const start = lines(line);
      for (let i = 0; i < count; i++) {
        const at = start + i * step;
        const before = i > 0 ? at - step : at;
        const after = i + 1 < count ? at + step : at;
        for (let k = 0; k < 3; k++)
          to[at + k] = mid * from[at + k] + wing * (from[before + k] + from[after + k]);
      }
    }
    return to;
  };
  const across = pass(rgb, 3, width, (row) => row * width * 3, height);
  return pass(across, 3 * width, height, (column) => column * 3, width);
}
