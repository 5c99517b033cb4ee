import sharp from 'sharp';
import type { Homography, Point, Quad } from '../../../src/geometry/index.ts';
import type { Photo } from '../../../src/photo/index.ts';
import { applyHomography, distort, invertHomography, lensOf, undistort } from '../../../src/sheet/index.ts';
import { layOut } from './layout.ts';
import type { Layout } from './layout.ts';
import { randomFrom } from '../../generate/random.ts';
import type { Random } from '../../generate/random.ts';

export interface Scene {
  photo: Photo;
  base: { width: number; height: number };
  corners: Quad;
  pxPerMm: number;
  what: string;
  /** Whether all four corners lie inside the picture. */
  whole: boolean;
}

const width = 1120;
const height = 840;

/**
 * A made-up photograph of a base, with its true corners. Same seed, same picture.
 * @param hard with other papers, a mount, hands, mats and books about it
 */
export async function shoot(seed: number, hard = false): Promise<Scene> {
  const d = randomFrom(seed * 7919 + 13);
  const layout = layOut(d, hard);
  const { toPx, tilt } = camera(layout.base, d);
  const lens = lensOf({ width, height }, d.next() < 0.3 ? 0 : d.between(-0.04, 0.02));
  const light = lamps(layout.base, d);
  const rgb = render(layout, invertHomography(toPx), lens, light);
  const sigma = d.next() < 0.5 ? 0.6 : d.between(0.6, 1.5);
  const grain = d.between(0.5, 5);
  const soft = await sharp(toBytes(rgb), { raw: { width, height, channels: 3 } })
    .blur(sigma)
    .raw()
    .toBuffer();
  const noisy = new Float32Array(soft.length);
  for (let i = 0; i < soft.length; i++)
    noisy[i] = soft[i] + grain * 2 * (d.next() + d.next() + d.next() - 1.5);
  const jpeg = await sharp(toBytes(noisy), { raw: { width, height, channels: 3 } })
    .jpeg({ quality: Math.round(d.between(55, 92)) })
    .toBuffer();
  const { data } = await sharp(jpeg).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  const { base } = layout;
  const cornersMm: Point[] = [
    [0, 0],
    [base.width, 0],
    [base.width, base.height],
    [0, base.height],
  ];
  const corners = cornersMm.map((p) => distort(lens, applyHomography(toPx, p))) as unknown as Quad;
  const whole = corners.every(([x, y]) => x > 3 && y > 3 && x < width - 3 && y < height - 3);
  const side = Math.hypot(corners[1][0] - corners[0][0], corners[1][1] - corners[0][1]);
  const what = `${layout.paper} on ${layout.table}, tilt ${Math.round(tilt)}`;
  const rgba = new Uint8Array(data);
  return {
    photo: { name: `scene ${seed}`, width, height, rgba },
    base,
    corners,
    pxPerMm: side / base.width,
    what,
    whole,
  };
}

/** Plain loops: the typed arrays' own conversions take seconds here. */
function toBytes(v: Float32Array): Buffer {
  const out = Buffer.alloc(v.length);
  for (let i = 0; i < v.length; i++) out[i] = Math.min(255, Math.max(0, v[i] + 0.5));
  return out;
}

/** Pinhole camera over the base's centre; returns mm to straight px. */
function camera(base: { width: number; height: number }, d: Random) {
  const f = width * d.between(0.6, 1.1);
  const tilt = d.next() < 0.3 ? d.between(0, 5) : d.between(0, 38);
  const t = (tilt * Math.PI) / 180;
  const roll = d.between(0, 2 * Math.PI);
  const about = d.between(0, 2 * Math.PI);
  const spread = d.between(0.45, 0.85) * height;
  const distance = (f * Math.hypot(base.width, base.height)) / spread / 1.15;
  // Rotation: roll about the axis, then tilt about an axis in the sheet.
  const c = Math.cos(roll);
  const s = Math.sin(roll);
  const [ax, ay] = [Math.cos(about), Math.sin(about)];
  const k = 1 - Math.cos(t);
  const r = [
    [Math.cos(t) + ax * ax * k, ax * ay * k],
    [ax * ay * k, Math.cos(t) + ay * ay * k],
    [-ay * Math.sin(t), ax * Math.sin(t)],
  ];
  const m = [0, 1].map((j) => [c * r[0][j] - s * r[1][j], s * r[0][j] + c * r[1][j], r[2][j]]);
  const cx = width * (0.5 + d.between(-0.08, 0.08));
  const cy = height * (0.5 + d.between(-0.06, 0.06));
  const h = [
    f * m[0][0] + (width / 2) * m[0][2],
    f * m[1][0] + (width / 2) * m[1][2],
    0,
    f * m[0][1] + (height / 2) * m[0][2],
    f * m[1][1] + (height / 2) * m[1][2],
    0,
    m[0][2],
    m[1][2],
    distance,
  ];
  const mid = [base.width / 2, base.height / 2];
  h[2] = cx * distance - h[0] * mid[0] - h[1] * mid[1];
  h[5] = cy * distance - h[3] * mid[0] - h[4] * mid[1];
  h[8] = distance - h[6] * mid[0] - h[7] * mid[1];
  return { toPx: h.map((v) => v / h[8]) as unknown as Homography, tilt };
}

/** Light at a place: a slope, perhaps a spot, soft shadows, a colour and an exposure. */
function lamps(base: { width: number; height: number }, d: Random) {
  const size = Math.max(base.width, base.height);
  const turn = d.between(0, 2 * Math.PI);
  const slope = d.between(0, 0.5) / size;
  const spot =
    d.next() < 0.25
      ? { x: d.between(0, base.width), y: d.between(0, base.height), r: size * d.between(0.4, 0.9) }
      : undefined;
  const shadows = Array.from({ length: d.pick([0, 0, 1, 1, 2]) }, () => ({
    x: d.between(-0.2, 1.2) * base.width,
    y: d.between(-0.2, 1.2) * base.height,
    a: d.between(0, 2 * Math.PI),
    soft: d.between(1, 25),
    wide: d.between(10, 80),
    left: d.between(0.25, 0.8),
  }));
  const gain = d.between(0.5, 1.15);
  const warm = d.between(-0.25, 0.25);
  const tint = [1 + warm, 1, 1 - warm];
  return (x: number, y: number): number[] => {
    let k =
      gain * (1 + slope * ((x - base.width / 2) * Math.cos(turn) + (y - base.height / 2) * Math.sin(turn)));
    if (spot) k *= 0.12 + 0.88 / (1 + ((x - spot.x) ** 2 + (y - spot.y) ** 2) ** 2 / spot.r ** 4);
    for (const s of shadows) {
      const off = Math.abs((x - s.x) * Math.cos(s.a) + (y - s.y) * Math.sin(s.a)) - s.wide / 2;
      const in_ = 1 / (1 + Math.exp((4 * off) / s.soft));
      k *= 1 - (1 - s.left) * in_;
    }
    k = Math.max(0, k);
    return tint.map((t) => t * k);
  };
}

/** One sample a pixel (the blur that follows softens its steps), linear light to sRGB. */
function render(
  layout: Layout,
  toMm: Homography,
  lens: ReturnType<typeof lensOf>,
  light: ReturnType<typeof lamps>,
) {
  const out = new Float32Array(width * height * 3);
  for (let y = 0, o = 0; y < height; y++) {
    for (let x = 0; x < width; x++, o += 3) {
      const [u, v] = applyHomography(toMm, undistort(lens, [x + 0.5, y + 0.5]));
      const own = layout.at(u, v);
      const lit = light(u, v);
      for (let c = 0; c < 3; c++) out[o + c] = 255 * encode(own[c] * lit[c]);
    }
  }
  return out;
}

/** @source IEC 61966-2-1 */
const encode = (v: number) => (v <= 0.0031308 ? 12.92 * v : 1.055 * Math.min(1, v) ** (1 / 2.4) - 0.055);
