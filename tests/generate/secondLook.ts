import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import sharp from 'sharp';
import { hash, noise } from './random.ts';

/**
 * npx tsx tests/generate/secondLook.ts OUT [COUNT] [FROM]: sheets of tape in another look than the fixtures and the
 * training scenes, for npm run exam. Foil is folded along random lines and mirrors a drawn room of windows. Pictures 0
 * to 23 were looked at when scenes were widened and weights chosen; those from 100 on are for fitting when a photograph counts
 * as unreadable.
 * Written flat from above, 5 to 8 px/mm, sharpened and compressed, in the exam's plain layout.
 */
type Rgb = [number, number, number];
interface Strip {
  a: Rgb;
  dir: [number, number];
  long: number;
  half: number;
  bend: number;
}
const papers: Record<string, Rgb> = {
  white: [0.82, 0.82, 0.8],
  lined: [0.8, 0.8, 0.76],
  blue: [0.3, 0.42, 0.6],
  grey: [0.4, 0.4, 0.41],
  kraft: [0.48, 0.33, 0.2],
  black: [0.03, 0.03, 0.035],
  wood: [0.45, 0.3, 0.17],
  carpet: [0.22, 0.2, 0.24],
};
const kinds = Object.keys(papers);
const [wide, high, fine] = [90, 64, 20];

/** One number in 0..1 for a picture and a purpose. */
const draw = (seed: number, what: number, k = 0): number => hash(seed + 17, what, k);

function strips(seed: number): Strip[] {
  return Array.from({ length: 5 + Math.floor(4 * draw(seed, 1)) }, (_, k) => {
    const turn = (Math.floor(4 * draw(seed, 2, k)) * Math.PI) / 2 + 0.25 * (draw(seed, 3, k) - 0.5);
    return {
      a: [8 + (wide - 16) * draw(seed, 4, k), 8 + (high - 16) * draw(seed, 5, k), 0],
      dir: [Math.cos(turn), Math.sin(turn)],
      long: 12 + 45 * draw(seed, 6, k),
      half: (1.2 + 1.6 * draw(seed, 7)) * (0.9 + 0.2 * draw(seed, 8, k)),
      bend: draw(seed, 9, k) < 0.2 ? 0.03 * (draw(seed, 10, k) - 0.5) : 0,
    };
  });
}

/** Place on a strip: along and across, mm; a cut of 1 to 2 mm opens every third one. */
function onStrip(s: Strip, k: number, x: number, y: number): { u: number; v: number; inside: boolean } {
  const [dx, dy] = [x - s.a[0], y - s.a[1]];
  const u = dx * s.dir[0] + dy * s.dir[1];
  const v = dy * s.dir[0] - dx * s.dir[1] - s.bend * u * u;
  const ragged = 0.06 * noise(u * 2, k, 5);
  const cut = k % 3 === 0 && Math.abs(u - 0.45 * s.long - 0.2 * v) < 0.5 + 0.5 * hash(k, 3, 9);
  return { u, v, inside: u > 0 && u < s.long && Math.abs(v) < s.half + ragged && !cut };
}

/** Slope of foil folded along random lines: each line turns all beyond it by a little. */
function slope(seed: number, k: number, u: number, v: number): [number, number] {
  const rough = 0.03 + 0.3 * draw(seed, 20) ** 2;
  let [nu, nv] = [0.3 * (hash(k, 1, seed) - 0.5), 0.3 * (hash(k, 2, seed) - 0.5)];
  for (let c = 0; c < 14; c++) {
    const turn = 6.283 * hash(c, k, seed + 3);
    const off = Math.cos(turn) * (u - 50 * hash(c, k, seed + 4)) + Math.sin(turn) * v;
    const fold = rough * (hash(c, k, seed + 5) - 0.5) * Math.tanh(4 * off);
    nu += Math.cos(turn) * fold;
    nv += Math.sin(turn) * fold;
  }
  const crumple = 0.5 * rough;
  return [nu + crumple * noise(u * 1.7, v * 1.7, seed + 6), nv + crumple * noise(u * 1.7, v * 1.7, seed + 7)];
}

/** What the room sends from where a facet looks: dark walls, two windows, a lamp. */
function room(seed: number, nu: number, nv: number): number {
  const wall = 0.05 + 0.5 * draw(seed, 30) + 0.25 * Math.sin(3 * nu + 5 * nv + 6 * draw(seed, 31));
  const window = (k: number) =>
    Math.abs(nu - draw(seed, 32, k) + 0.5) < 0.16 && Math.abs(nv - draw(seed, 33, k) + 0.5) < 0.1 ? 1.6 : 0;
  const lamp = 5 * Math.exp(-((nu - 0.25) ** 2 + (nv + 0.2) ** 2) / 0.004);
  return Math.max(0.02, wall) + window(0) + window(1) + lamp * Number(draw(seed, 34) < 0.6);
}

function ground(seed: number, kind: string, x: number, y: number): Rgb {
  let shade = 1 + 0.04 * noise(x * 3, y * 3, seed + 40);
  if (kind === 'wood') shade += 0.2 * noise(x * 0.15, y * 1.3 + noise(x * 0.1, y * 0.3, 7), seed + 41);
  if (kind === 'carpet') shade += 0.5 * noise(x * 2.2, y * 2.2, seed + 42);
  const [r, g, b] = papers[kind].map((v) => v * shade);
  if (kind === 'lined' && y % 7 < 0.3) return [0.55 * r, 0.65 * g, 0.9 * b];
  const drawn = draw(seed, 43) < 0.5 && Math.abs(y - 30 - 12 * Math.sin(x / 9)) < 0.9;
  return drawn ? [0.35 * r + 0.1, 0.25 * g, 0.2 * b] : [r, g, b];
}

/** A lamp's dome, lit or not, on some strips; its shadow lies to the right. */
function lampAt(s: Strip, x: number, y: number): { body: number; shadow: boolean } {
  const [cx, cy] = [s.a[0] + s.dir[0] * 0.7 * s.long, s.a[1] + s.dir[1] * 0.7 * s.long];
  return { body: Math.hypot(x - cx, y - cy), shadow: Math.hypot(x - cx - 1.8, y - cy - 0.9) < 2.3 };
}

function pixel(
  seed: number,
  kind: string,
  laid: Strip[],
  x: number,
  y: number,
): { light: Rgb; copper: boolean } {
  let light = ground(seed, kind, x, y);
  let copper = false;
  const [tintG, tintB] = [0.6 + 0.2 * draw(seed, 50), 0.48 + 0.3 * draw(seed, 50)];
  laid.forEach((s, k) => {
    const { u, v, inside } = onStrip(s, k, x, y);
    const lifted = onStrip(s, k, x - 0.5, y - 0.7).inside && k % 2 === 1;
    if (lifted && !inside) light = light.map((c) => 0.45 * c) as Rgb;
    if (!inside) return;
    copper = true;
    const seen = room(seed, ...slope(seed, k, u, v));
    light = [0.93 * seen, tintG * seen, tintB * seen];
  });
  const sun = 0.35 + 0.75 / (1 + Math.exp((x - wide * draw(seed, 51)) * (draw(seed, 52) < 0.3 ? 1.5 : 0.02)));
  light = light.map((c) => c * sun) as Rgb;
  laid.slice(0, 3).forEach((s) => {
    const { body, shadow } = lampAt(s, x, y);
    if (shadow && body > 2.2) light = light.map((c) => 0.4 * c) as Rgb;
    const lit = draw(seed, 53) < 0.35 ? Math.exp(-body / 3.5) : 0;
    light = [light[0] + 1.1 * lit, light[1] + 0.25 * lit, light[2] + 0.2 * lit];
    if (body > 2.2) return;
    copper = false;
    light = [0.75 + 2 * lit, 0.3 + lit, 0.25 + lit];
  });
  const finger = Math.hypot(Math.max(0, 62 - x), y - 50 * draw(seed, 54)) - 6.5;
  if (draw(seed, 55) < 0.3 && finger < 0) {
    copper = false;
    light = [0.6, 0.38, 0.28].map((c) => c * sun * (0.55 + 0.07 * Math.min(6.5, -finger))) as Rgb;
  }
  return { light, copper };
}

const eightBits = (v: number): number => Math.round(255 * Math.min(1, Math.max(0, v)) ** (1 / 2.2));

async function picture(folder: string, n: number): Promise<void> {
  const seed = 900 + 31 * n;
  const kind = kinds[n % kinds.length];
  const laid = strips(seed);
  const [w, h] = [wide * fine, high * fine];
  const rgb = Buffer.alloc(3 * w * h);
  const mask = Buffer.alloc(w * h);
  const exposure = 0.75 + 0.7 * draw(seed, 60);
  const warm = draw(seed, 61) < 0.4 ? 0.25 : 0;
  for (let k = 0; k < w * h; k++) {
    const { light, copper } = pixel(
      seed,
      kind,
      laid,
      ((k % w) + 0.5) / fine,
      (Math.floor(k / w) + 0.5) / fine,
    );
    const grain = 1 + 0.25 * (hash(k, 1, seed) - 0.5);
    rgb[3 * k] = eightBits(exposure * light[0] * (1 + warm) * grain);
    rgb[3 * k + 1] = eightBits(exposure * light[1] * grain);
    rgb[3 * k + 2] = eightBits(exposure * light[2] * (1 - warm) * grain);
    mask[k] = copper ? 255 : 0;
  }
  const scale = 5 + 3 * draw(seed, 62);
  const size = { width: Math.round(wide * scale), height: Math.round(high * scale) };
  const name = join(folder, `${String(n).padStart(2, '0')}-${kind}`);
  await sharp(rgb, { raw: { width: w, height: h, channels: 3 } })
    .resize(size)
    .blur(0.4 + 0.5 * draw(seed, 63))
    .sharpen({ sigma: 1 })
    .jpeg({ quality: 78 })
    .toFile(`${name}.jpg`);
  await sharp(mask, { raw: { width: w, height: h, channels: 1 } })
    .resize(size)
    .threshold(128)
    .png()
    .toFile(`${name}_mask.png`);
  const [r, b] = [size.width, size.height];
  const base = { width_mm: wide, height_mm: high, corners_px: [[0, 0], [r, 0], [r, b], [0, b]] }; // prettier-ignore
  await writeFile(`${name}.json`, JSON.stringify({ base }));
}

const [folder, count = '24', from = '0'] = process.argv.slice(2);
if (!folder) throw new Error('Name a folder: npx tsx tests/generate/secondLook.ts OUT');
await mkdir(folder, { recursive: true });
for (let n = Number(from); n < Number(from) + Number(count); n++) await picture(folder, n);
