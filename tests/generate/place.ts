import type { Point } from '../../src/geometry/index.ts';
import type { Build, BuiltLamp } from './build.ts';
import type { Camera } from './camera.ts';
import { lightAt, smoothstep } from './shade.ts';
import type { Shaded } from './shade.ts';
import type { Light, Rgb } from './conditions.ts';
import { gridPxPerMm } from './lay.ts';
import type { Laid } from './lay.ts';
import { markingShade } from './marking.ts';
import { hash } from './random.ts';

/** Lays lamps and cell over the shaded sheet. @returns 1 where they hide what lies below, grid sized. */
export function placeParts(build: Build, laid: Laid, out: Shaded, light: Light, camera: Camera): Uint8Array {
  const hidden = new Uint8Array(laid.width * laid.height);
  for (const lamp of build.lamps) placeLamp(lamp, laid, out, hidden, light);
  if (build.cell.present) placeCell(build.cell, laid, out, hidden, light, camera);
  return hidden;
}

/** A flat lamp on a small board: silver ends, white body, amber dot, a + printed by the plus pad. */
function placeLamp(lamp: BuiltLamp, laid: Laid, out: Shaded, hidden: Uint8Array, light: Light): void {
  const long = lamp.padMm + 0.9;
  const wide = 2;
  around(laid, lamp.at, long + 3, (x, y, at) => {
    const dx = x - lamp.at[0];
    const dy = y - lamp.at[1];
    const u = dx * lamp.axis[0] + dy * lamp.axis[1];
    const v = dy * lamp.axis[0] - dx * lamp.axis[1];
    const lit = lightAt(light, x, y);
    if (Math.abs(u) > long || Math.abs(v) > wide) {
      const reach = Math.max(Math.abs(u - 0.3) - long, Math.abs(v - 0.3) - wide);
      if (reach < 0.7) scale(out, at, 0.55 + 0.45 * smoothstep(0, 0.7, reach));
      return;
    }
    hidden[at] = 1;
    set(out, at, lampColour(lamp, u, v, long), lit, light);
  });
}

function lampColour(lamp: BuiltLamp, u: number, v: number, long: number): Rgb {
  const dot = Math.hypot(u, v);
  if (dot < 1.1) return lamp.colour === 'white' ? [0.8, 0.72, 0.22] : [0.82, 0.55, 0.12];
  if (dot < 1.5) return [0.9, 0.9, 0.88];
  const plusAt = -2.4;
  const onPlus =
    (Math.abs(u - plusAt) < 0.13 && Math.abs(v) < 0.6) || (Math.abs(v) < 0.13 && Math.abs(u - plusAt) < 0.6);
  if (onPlus) return [0.04, 0.04, 0.05];
  if (Math.abs(u) > long - 1.3) return [0.42, 0.42, 0.44];
  return [0.72, 0.73, 0.74];
}

/** A coin cell, + up: its top stands `height` over the sheet and so leans away from the camera's foot. */
function placeCell(
  { at, marking }: Build['cell'],
  laid: Laid,
  out: Shaded,
  hidden: Uint8Array,
  light: Light,
  camera: Camera,
): void {
  const mark = marking ? markingShade(marking) : () => 1;
  const radius = 10;
  const height = 3.2;
  const lean = height / (camera.at[2] - height);
  const top: Point = [at[0] + (at[0] - camera.at[0]) * lean, at[1] + (at[1] - camera.at[1]) * lean];
  around(laid, at, radius + 4, (x, y, i) => {
    const lit = lightAt(light, x, y);
    const topR = Math.hypot(x - top[0], y - top[1]);
    const footR = Math.hypot(x - at[0], y - at[1]);
    if (topR > radius && footR > radius) {
      const reach = footR - radius;
      if (reach < 2.2) scale(out, i, 0.5 + 0.5 * smoothstep(0, 2.2, reach));
      return;
    }
    hidden[i] = 1;
    if (topR > radius) return set(out, i, [0.1, 0.1, 0.11], lit, light);
    const sheen = 0.32 + 0.3 * smoothstep(-0.9, 0.9, Math.sin(Math.atan2(y - top[1], x - top[0]) * 2 + 0.6));
    const brushed =
      sheen *
      (0.97 + 0.06 * hash(Math.round(topR * 12), 3, 5)) *
      (topR > radius - 0.5 ? 0.6 : 1) *
      mark([x - top[0], y - top[1]]);
    set(out, i, [brushed, brushed, brushed * 1.02], lit, light);
  });
}

function around(
  laid: Laid,
  p: Point,
  reach: number,
  visit: (x: number, y: number, at: number) => void,
): void {
  const clampX = (v: number) => Math.min(laid.width - 1, Math.max(0, Math.round(v * gridPxPerMm)));
  const clampY = (v: number) => Math.min(laid.height - 1, Math.max(0, Math.round(v * gridPxPerMm)));
  for (let j = clampY(p[1] - reach); j <= clampY(p[1] + reach); j++) {
    for (let i = clampX(p[0] - reach); i <= clampX(p[0] + reach); i++) {
      visit((i + 0.5) / gridPxPerMm, (j + 0.5) / gridPxPerMm, j * laid.width + i);
    }
  }
}

function scale(out: Shaded, at: number, by: number): void {
  for (let k = 0; k < 3; k++) out[3 * at + k] *= by;
}

function set(out: Shaded, at: number, colour: Rgb, lit: number, light: Light): void {
  for (let k = 0; k < 3; k++) out[3 * at + k] = colour[k] * lit * light.colour[k];
}
