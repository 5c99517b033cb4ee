import type { Point } from '../../src/geometry/index.ts';
import type { Build, Planted } from './build.ts';
import { cornersPx, project } from './camera.ts';
import type { Camera } from './camera.ts';
import type { Conditions } from './conditions.ts';
import { padOf } from './harbourNight.ts';

/** All that is true of a generated photograph. */
export interface Truth {
  schema: 'foilproof-fixture/1';
  seed: number;
  image: string;
  image_size: [number, number];
  base: { width_mm: number; height_mm: number; corners_px: Point[] };
  /** mm to undistorted px, and x_d = x(1 + k1 r^2) with r in half diagonals. */
  camera: { homography: number[]; k1: number };
  faults: (Planted & { px: Point })[];
  openings: { id: string; at: Point; order: number }[];
  lamps: { id: string; at: Point; plus: Point; minus: Point }[];
  cell: { at: Point; present: boolean };
  settings: Conditions;
}

export function truthOf(build: Build, c: Conditions, camera: Camera, seed: number, image: string): Truth {
  return {
    schema: 'foilproof-fixture/1',
    seed,
    image,
    image_size: [c.width, c.height],
    base: { ...build.base, corners_px: cornersPx(camera, build.base).map((p) => rounded(p, 3)) },
    camera: { homography: camera.toPx.map((v) => Number(v.toPrecision(10))), k1: digits(c.k1, 6) },
    faults: build.planted.map((f) => ({ ...f, px: rounded(project(camera, f.at), 2) })),
    openings: build.contacts,
    lamps: build.lamps.map((l) => ({
      id: l.id,
      at: l.at,
      plus: rounded(padOf(l, -1), 2),
      minus: rounded(padOf(l, 1), 2),
    })),
    cell: build.cell,
    settings: roundedSettings(c),
  };
}

function roundedSettings(c: Conditions): Conditions {
  const entries = Object.entries(c).map(([k, v]) => [k, typeof v === 'number' ? digits(v, 5) : v]);
  return Object.fromEntries(entries) as Conditions;
}

function rounded(p: Point, places: number): Point {
  return [digits(p[0], places), digits(p[1], places)];
}

function digits(v: number, places: number): number {
  return Number(v.toFixed(places));
}
