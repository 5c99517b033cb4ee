import type { Point } from '../../src/geometry/index.ts';
import type { Build } from './build.ts';
import type { Camera } from './camera.ts';
import { paperColour } from './conditions.ts';
import type { Conditions, Light, Rgb } from './conditions.ts';
import { gridPxPerMm, patchOwner } from './lay.ts';
import type { Laid } from './lay.ts';
import { hash, noise } from './random.ts';

/** Light leaving the sheet towards the camera: linear RGB, row-major, width*height*3. */
export type Shaded = Float32Array;

/** Reflectance of copper for the mirror image; a bare metal tints what it mirrors. */
const copper: Rgb = [0.93, 0.6, 0.46];

/** What a print reflects by its sRGB grey (IEC 61966-2-1); toner keeps about 4 % (common practice, no source). */
const reflects = Float32Array.from({ length: 256 }, (_, grey) => 0.04 + 0.96 * (grey / 255) ** 2.2);

/** Shades paper, patch and foil as laid. */
export function shade(
  build: Build,
  laid: Laid,
  c: Conditions,
  light: Light,
  camera: Camera,
  seed: number,
): Shaded {
  const out = new Float32Array(laid.width * laid.height * 3);
  const paper = paperColour[c.paper];
  const pencil = pencilled(build.pencil, laid);
  const print = build.print?.grey;
  for (let j = 0; j < laid.height; j++) {
    for (let i = 0; i < laid.width; i++) {
      const at = j * laid.width + i;
      const x = (i + 0.5) / gridPxPerMm;
      const y = (j + 0.5) / gridPxPerMm;
      const owner = laid.owner[at];
      const lit = lightAt(light, x, y);
      if (owner > 0 && owner !== patchOwner) {
        const m = mirrored(light, camera, x, y, laid.slopeX[at], laid.slopeY[at]);
        const rim = isEdge(laid, i, j) ? 0.55 : 1;
        for (let k = 0; k < 3; k++) out[3 * at + k] = copper[k] * rim * light.colour[k] * (m + 0.03 * lit);
      } else {
        const grain = 1 + 0.018 * (hash(i, j, seed) - 0.5) + 0.02 * noise(x * 2.5, y * 2.5, seed + 4);
        const wash = c.paper === 'wash' && owner === 0 ? washAt(x, y, seed) : 0;
        const grey = owner === 0 ? pencil[at] : 0;
        const inked = owner === 0 && print ? reflects[print[at]] : 1;
        for (let k = 0; k < 3; k++) {
          const own = owner === patchOwner ? [0.88, 0.87, 0.8][k] : paper[k];
          const painted = own * (1 - wash * [0.75, 0.4, 0.15][k]);
          out[3 * at + k] = painted * grain * (1 - 0.55 * grey) * inked * lit * light.colour[k];
        }
      }
    }
  }
  return out;
}

/** Brightness of the light at a place, about 1 over the base. */
export function lightAt(light: Light, x: number, y: number): number {
  const d2 = (x - light.at[0]) ** 2 + (y - light.at[1]) ** 2 + light.at[2] ** 2;
  const m2 = (52 - light.at[0]) ** 2 + (74 - light.at[1]) ** 2 + light.at[2] ** 2;
  return light.ambient + (1 - light.ambient) * (m2 / d2) ** 1.5;
}

/** What the foil mirrors: a dark room, brighter overhead, and the window or lamp. */
function mirrored(light: Light, camera: Camera, x: number, y: number, sx: number, sy: number): number {
  const toEye = unit(camera.at[0] - x, camera.at[1] - y, camera.at[2]);
  const rx = 2 * -sx - toEye[0];
  const ry = 2 * -sy - toEye[1];
  const toLight = unit(light.at[0] - x, light.at[1] - y, light.at[2]);
  const off = Math.hypot(rx - toLight[0], ry - toLight[1]) / light.spread;
  const lamp = off < 1.4 ? light.glare * smoothstep(1.4, 0.7, off) : 0;
  const halo = 0.55 / (1 + 1.5 * off * off);
  const room = 0.025 + 0.2 * smoothstep(0.6, 0.1, Math.hypot(rx + 0.15, ry - 0.1));
  return lamp + halo + room;
}

function isEdge(laid: Laid, i: number, j: number): boolean {
  const at = j * laid.width + i;
  const here = laid.owner[at];
  return (i > 0 && laid.owner[at - 1] !== here) || (j > 0 && laid.owner[at - laid.width] !== here);
}

/** Blotches of water colour, 0..1. */
function washAt(x: number, y: number, seed: number): number {
  const v = noise(x / 26, y / 26, seed + 40) + 0.35 * noise(x / 8, y / 8, seed + 41);
  return 0.75 * smoothstep(-0.05, 0.25, v) * (0.8 + 0.2 * noise(x / 3, y / 3, seed + 42));
}

/** Darkness of the pencil, 0..1. */
function pencilled(lines: Point[][], laid: Laid): Float32Array {
  const dark = new Float32Array(laid.width * laid.height);
  for (const line of lines) {
    for (let k = 0; k + 1 < line.length; k++) {
      const [a, b] = [line[k], line[k + 1]];
      const steps = Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) * gridPxPerMm);
      for (let s = 0; s <= steps; s++) {
        const x = a[0] + ((b[0] - a[0]) * s) / steps;
        const y = a[1] + ((b[1] - a[1]) * s) / steps;
        dab(dark, laid, x, y);
      }
    }
  }
  return dark;
}

function dab(dark: Float32Array, laid: Laid, x: number, y: number): void {
  const cx = Math.round(x * gridPxPerMm);
  const cy = Math.round(y * gridPxPerMm);
  for (let j = cy - 4; j <= cy + 4; j++) {
    for (let i = cx - 4; i <= cx + 4; i++) {
      if (i < 0 || j < 0 || i >= laid.width || j >= laid.height) continue;
      const core = 1 - Math.hypot(i - cx, j - cy) / 4.5;
      const at = j * laid.width + i;
      dark[at] = Math.max(dark[at], core * (0.55 + 0.45 * noise(i / 4, j / 4, 17)));
    }
  }
}

function unit(x: number, y: number, z: number): Rgb {
  const l = Math.hypot(x, y, z);
  return [x / l, y / l, z / l];
}

export function smoothstep(from: number, to: number, v: number): number {
  const t = Math.min(1, Math.max(0, (v - from) / (to - from)));
  return t * t * (3 - 2 * t);
}
