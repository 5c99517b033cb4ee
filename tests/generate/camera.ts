import type { Homography, Point, Quad } from '../../src/geometry/index.ts';
import type { Conditions } from './conditions.ts';

/** A pinhole camera over the sheet, with radial distortion x_d = x(1 + k1 r^2), r in half diagonals. */
export interface Camera {
  width: number;
  height: number;
  k1: number;
  /** mm on the sheet to undistorted px. */
  toPx: Homography;
  toMm: Homography;
  /** The camera's place, mm, z up from the sheet. */
  at: readonly [number, number, number];
}

/** A camera that sees the base's middle in the picture's middle at the scale asked for. */
export function cameraOver(base: { width_mm: number; height_mm: number }, c: Conditions): Camera {
  const focalPx = 1.15 * Math.max(c.width, c.height);
  const distance = focalPx / c.pxPerMm;
  const tilt = (c.tiltDeg * Math.PI) / 180;
  const lean = (c.leanDeg * Math.PI) / 180;
  const roll = (c.rollDeg * Math.PI) / 180;
  // Back is the unit vector from the sheet's middle to the camera; x right, y down, z towards the camera.
  const back = [Math.sin(tilt) * Math.cos(lean), Math.sin(tilt) * Math.sin(lean), Math.cos(tilt)];
  const flat = [Math.cos(roll), Math.sin(roll), 0];
  const dot = flat[0] * back[0] + flat[1] * back[1];
  const raw = [flat[0] - dot * back[0], flat[1] - dot * back[1], -dot * back[2]];
  const length = Math.hypot(...raw);
  const right = raw.map((v) => v / length);
  // y is down and z up, so the frame is left-handed: down = right x back.
  const down = [
    right[1] * back[2] - right[2] * back[1],
    right[2] * back[0] - right[0] * back[2],
    right[0] * back[1] - right[1] * back[0],
  ].map((v) => -v);
  const sign = down[0] * -Math.sin(roll) + down[1] * Math.cos(roll) < 0 ? -1 : 1;
  const mid: Point = [base.width_mm / 2, base.height_mm / 2];
  const row = (axis: number[], s: number) => [
    s * focalPx * axis[0],
    s * focalPx * axis[1],
    -s * focalPx * (axis[0] * mid[0] + axis[1] * mid[1]),
  ];
  const depth = [-back[0], -back[1], back[0] * mid[0] + back[1] * mid[1] + distance];
  const u = row(right, 1);
  const v = row(down, sign);
  const cx = c.width / 2;
  const cy = c.height / 2;
  const full = [...u.map((e, i) => e + cx * depth[i]), ...v.map((e, i) => e + cy * depth[i]), ...depth];
  const toPx = full.map((e) => e / full[8]) as unknown as Homography;
  const at = [mid[0] + distance * back[0], mid[1] + distance * back[1], distance * back[2]] as const;
  return { width: c.width, height: c.height, k1: c.k1, toPx, toMm: inverse(toPx), at };
}

/** Where a place on the sheet appears, px. */
export function project(camera: Camera, p: Point): Point {
  const [x, y] = apply(camera.toPx, p[0], p[1]);
  const cx = camera.width / 2;
  const cy = camera.height / 2;
  const r2 = ((x - cx) ** 2 + (y - cy) ** 2) / (cx * cx + cy * cy);
  const s = 1 + camera.k1 * r2;
  return [cx + (x - cx) * s, cy + (y - cy) * s];
}

/** The place on the sheet that a px shows. */
export function unproject(camera: Camera, x: number, y: number): Point {
  const cx = camera.width / 2;
  const cy = camera.height / 2;
  const diagonal2 = cx * cx + cy * cy;
  let s = 1;
  for (let i = 0; i < 3; i++) s = 1 + (camera.k1 * ((x - cx) ** 2 + (y - cy) ** 2)) / (s * s * diagonal2);
  return apply(camera.toMm, cx + (x - cx) / s, cy + (y - cy) / s);
}

export function cornersPx(camera: Camera, base: { width_mm: number; height_mm: number }): Quad {
  const { width_mm: w, height_mm: h } = base;
  return [project(camera, [0, 0]), project(camera, [w, 0]), project(camera, [w, h]), project(camera, [0, h])];
}

function apply(h: Homography, x: number, y: number): Point {
  const w = h[6] * x + h[7] * y + h[8];
  return [(h[0] * x + h[1] * y + h[2]) / w, (h[3] * x + h[4] * y + h[5]) / w];
}

/** Inverse by the adjugate, scaled so that the last entry is 1. */
function inverse(m: Homography): Homography {
  const [a, b, c, d, e, f, g, h, i] = m;
  const adjugate = [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
  return adjugate.map((v) => v / adjugate[8]) as unknown as Homography;
}
