import type { Random } from '../../generate/random.ts';
import { noise } from '../../generate/random.ts';

export type Rgb = [number, number, number];
/** Linear reflectance at a place in mm. */
export type Surface = (x: number, y: number) => Rgb;

const grey = (v: number): Rgb => [v, v, v];
const times = (c: Rgb, k: number): Rgb => [c[0] * k, c[1] * k, c[2] * k];
const near = (v: number) => Math.abs(v - Math.round(v));

export const tables = [
  'wood',
  'planks',
  'cloth',
  'check',
  'mat',
  'dark',
  'pale',
  'granite',
  'tiles',
  'newsprint',
  'sheet',
] as const;

/** A table top; `paper` is the base's own colour, which the pale one and the sheet beneath come near to. */
export function tableSurface(kind: (typeof tables)[number], paper: Rgb, d: Random): Surface {
  const seed = Math.floor(d.between(0, 1e6));
  const turn = d.between(0, Math.PI);
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  const u = (x: number, y: number) => c * x + s * y;
  const v = (x: number, y: number) => -s * x + c * y;
  const tone = d.between(0.5, 1.6);
  const tint: Rgb = [d.between(0.1, 0.6), d.between(0.1, 0.6), d.between(0.1, 0.6)];
  if (kind === 'wood' || kind === 'planks') {
    const plank = d.between(40, 110);
    return (x, y) => {
      const p = u(x, y);
      const q = v(x, y);
      const g = 0.5 + 0.5 * noise(p / 70 + noise(p / 40, q / 20, seed + 1), q / d0, seed);
      const fibre = 1 + 0.2 * noise(p / 12, q * 1.8, seed + 2);
      const seam = kind === 'planks' && near(q / plank) * plank < 0.6 ? 0.25 : 1;
      const board = kind === 'planks' ? 1 + 0.25 * noise(Math.round(q / plank) * 7.3, 0.5, seed + 3) : 1;
      return times([0.3 + 0.16 * g, 0.18 + 0.1 * g, 0.09 + 0.06 * g], fibre * seam * board * tone);
    };
  }
  if (kind === 'cloth')
    return (x, y) =>
      times(
        tint,
        (1 + 0.25 * Math.sin(u(x, y) * 5) * Math.sin(v(x, y) * 5)) * (1 + 0.25 * noise(x / 40, y / 40, seed)),
      );
  if (kind === 'check') {
    const p = d.between(8, 30);
    return (x, y) =>
      times(
        tint,
        0.4 +
          0.5 * Number(near(u(x, y) / p) < 0.25) +
          0.5 * Number(near(v(x, y) / p) < 0.25) +
          0.06 * noise(x * 2, y * 2, seed),
      );
  }
  if (kind === 'mat') {
    const green: Rgb = d.next() < 0.5 ? [0.02, 0.09, 0.06] : [0.02, 0.04, 0.12];
    const line = d.between(1.5, 5);
    return (x, y) => {
      const on = near(u(x, y) / 10) * 10 < 0.25 || near(v(x, y) / 10) * 10 < 0.25;
      return times(green, (on ? line : 1) * (1 + 0.1 * noise(x * 2, y * 2, seed)));
    };
  }
  if (kind === 'dark') return (x, y) => grey(0.015 * tone * (1 + 0.4 * noise(x / 3, y / 3, seed)));
  if (kind === 'pale') {
    const k = d.between(0.72, 1.0);
    return (x, y) =>
      times(paper, k * (1 + 0.02 * noise(x * 2, y * 2, seed) + 0.04 * noise(x / 60, y / 60, seed + 1)));
  }
  if (kind === 'granite')
    return (x, y) =>
      grey(
        0.22 *
          tone *
          Math.max(0.1, 1 + 0.7 * noise(x / 1.5, y / 1.5, seed) + 0.4 * noise(x / 5, y / 5, seed + 1)),
      );
  if (kind === 'tiles') {
    const p = d.between(30, 90);
    return (x, y) =>
      near(u(x, y) / p) * p < 1 || near(v(x, y) / p) * p < 1
        ? grey(0.5)
        : times(tint, 0.8 + 0.3 * noise(Math.round(u(x, y) / p) * 5.1, Math.round(v(x, y) / p) * 3.7, seed));
  }
  if (kind === 'newsprint')
    return (x, y) => {
      const line = near(v(x, y) / 4) < 0.28 && noise(u(x, y) / 1.2, Math.round(v(x, y) / 4) * 9, seed) > -0.1;
      return times([0.62, 0.6, 0.54], line && near(u(x, y) / 60) * 60 > 3 ? 0.3 : 1);
    };
  const half: Rgb = times(paper, d.between(0.8, 1.05));
  const w = d.between(120, 190);
  const h = d.between(100, 170);
  const dark = d.between(0.05, 0.3);
  return (x, y) => (Math.abs(u(x, y)) < w && Math.abs(v(x, y)) < h ? half : times(tint, dark));
}

const d0 = 2.5;

export const papers = ['white', 'cream', 'kraft', 'blue', 'lined', 'black', 'wash', 'grey'] as const;

export function paperSurface(kind: (typeof papers)[number], d: Random): { colour: Rgb; at: Surface } {
  const seed = Math.floor(d.between(0, 1e6));
  const colour: Rgb = {
    white: [0.82, 0.82, 0.8] as Rgb,
    cream: [0.8, 0.75, 0.62] as Rgb,
    kraft: [0.46, 0.31, 0.17] as Rgb,
    blue: [0.42, 0.58, 0.75] as Rgb,
    lined: [0.82, 0.82, 0.82] as Rgb,
    black: [0.04, 0.04, 0.045] as Rgb,
    wash: [0.82, 0.81, 0.77] as Rgb,
    grey: [0.4, 0.4, 0.4] as Rgb,
  }[kind];
  const blots = Array.from(
    { length: 3 },
    () => [d.between(0.4, 1), d.between(0.4, 1), d.between(0.4, 1)] as Rgb,
  );
  return {
    colour,
    at: (x, y) => {
      let k = 1 + 0.02 * noise(x * 3, y * 3, seed);
      if (kind === 'kraft') k += 0.06 * noise(x / 5, y / 5, seed + 1);
      if (kind === 'lined' && near(y / 8) * 8 < 0.25) return [0.35, 0.5, 0.75];
      if (kind !== 'wash') return times(colour, k);
      const out = times(colour, k);
      blots.forEach((b, i) => {
        const n = noise(x / 30, y / 30, seed + 9 + i) + 0.3 * noise(x / 6, y / 6, seed + 19 + i);
        const m = Math.min(1, Math.max(0, (n - 0.35) * 8));
        for (let c = 0; c < 3; c++) out[c] *= 1 - m + m * b[c];
      });
      return out;
    },
  };
}
