import type { Conditions, Light, Rgb } from './conditions.ts';
import { hash, noise } from './random.ts';
import { lightAt, smoothstep } from './shade.ts';

/** Colour of the table at a place outside the base, with the shadow that the sheet throws on it. */
export function tableAt(
  x: number,
  y: number,
  c: Conditions,
  light: Light,
  base: { width_mm: number; height_mm: number },
  seed: number,
): Rgb {
  const lit = lightAt(light, x, y) * shadow(x, y, light, base);
  const own = surface(x, y, c.table, seed);
  return [own[0] * lit * light.colour[0], own[1] * lit * light.colour[1], own[2] * lit * light.colour[2]];
}

function shadow(x: number, y: number, light: Light, base: { width_mm: number; height_mm: number }): number {
  const away = Math.hypot(light.at[0] - 52, light.at[1] - 74);
  const sx = x + (1.2 * (light.at[0] - 52)) / away;
  const sy = y + (1.2 * (light.at[1] - 74)) / away;
  const out = Math.max(-sx, sx - base.width_mm, -sy, sy - base.height_mm);
  return 0.6 + 0.4 * smoothstep(-0.8, 1.6, out);
}

function surface(x: number, y: number, table: Conditions['table'], seed: number): Rgb {
  if (table === 'wood') {
    const g = 0.5 + 0.5 * noise(x / 60 + 0.6 * noise(x / 40, y / 25, seed + 2), y / 2.2, seed + 1);
    const fibre = 1 + 0.12 * noise(x / 9, y * 2.2, seed + 3);
    return [(0.2 + 0.16 * g) * fibre, (0.115 + 0.1 * g) * fibre, (0.06 + 0.05 * g) * fibre];
  }
  if (table === 'mat') {
    const lines =
      Math.abs(x / 10 - Math.round(x / 10)) < 0.02 || Math.abs(y / 10 - Math.round(y / 10)) < 0.02;
    const v = lines ? 3.2 : 1 + 0.1 * noise(x * 2, y * 2, seed);
    return [0.02 * v, 0.045 * v, 0.05 * v];
  }
  const speck =
    1 +
    0.05 * noise(x * 1.5, y * 1.5, seed) +
    0.04 * (hash(Math.round(x * 8), Math.round(y * 8), seed) - 0.5);
  if (table === 'grey') return [0.27 * speck, 0.27 * speck, 0.28 * speck];
  const weave = 1 + 0.04 * Math.sin(x * 6) * Math.sin(y * 6) + 0.05 * noise(x / 30, y / 30, seed);
  return [0.6 * speck * weave, 0.58 * speck * weave, 0.54 * speck * weave];
}
