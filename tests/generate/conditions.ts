import type { Random } from './random.ts';

/** Linear light, 0..1. */
export type Rgb = readonly [number, number, number];

export const papers = ['white', 'cream', 'kraft', 'wash'] as const;
export const tables = ['wood', 'grey', 'mat', 'pale'] as const;
export const lights = ['window', 'desk', 'ceiling'] as const;

/** How a photograph is taken. */
export interface Conditions {
  paper: (typeof papers)[number];
  table: (typeof tables)[number];
  light: (typeof lights)[number];
  /** Size of the upright picture, px. */
  width: number;
  height: number;
  /** px per mm at the middle of the base. */
  pxPerMm: number;
  tiltDeg: number;
  /** Direction the camera leans to, degrees. */
  leanDeg: number;
  rollDeg: number;
  /** Radial distortion, r in half diagonals. */
  k1: number;
  wrinkle: number;
  /** Deviation of the sensor noise, of 1. */
  noise: number;
  blurPx: number;
  quality: number;
}

/** Draws conditions of the usual kind; what is given stays. */
export function drawConditions(random: Random, given: Partial<Conditions> = {}): Conditions {
  const upright = random.next() < 0.75;
  const pxPerMm = upright ? random.between(9.2, 11.6) : random.between(8.2, 8.8);
  const turn = upright ? random.pick([0, 0, 0, 180]) : random.pick([0, 90, 270]);
  const drawn: Conditions = {
    paper: random.pick(papers),
    table: random.pick(tables),
    light: random.pick(lights),
    width: upright ? 1500 : 2000,
    height: upright ? 2000 : 1500,
    pxPerMm: turn % 180 === 90 ? Math.min(12, pxPerMm * 1.25) : pxPerMm,
    tiltDeg: random.between(3, 16),
    leanDeg: random.between(0, 360),
    rollDeg: turn + random.between(-9, 9),
    k1: random.between(-0.02, 0.01),
    wrinkle: random.between(0.7, 1.4),
    noise: random.between(0.004, 0.011),
    blurPx: random.between(0.5, 0.85),
    quality: 84,
  };
  return { ...drawn, ...given };
}

/** Diffuse reflectance. */
export const paperColour: Record<Conditions['paper'], Rgb> = {
  white: [0.84, 0.84, 0.82],
  cream: [0.84, 0.79, 0.67],
  kraft: [0.5, 0.34, 0.2],
  wash: [0.84, 0.83, 0.8],
};

export interface Light {
  /** Where it is, mm in the base's frame, z up. */
  at: Rgb;
  colour: Rgb;
  /** Share of the light that comes from all round. */
  ambient: number;
  /** Half size of its mirror image, in units of the reflected ray's x and y. */
  spread: number;
  /** Brightness of its mirror image against paper white. */
  glare: number;
}

/** Places the lamp or window of the kind asked for. */
export function drawLight(kind: Conditions['light'], random: Random): Light {
  const turn = random.between(0, 2 * Math.PI);
  const from = (distance: number, height: number): Rgb => [
    52 + distance * Math.cos(turn),
    74 + distance * Math.sin(turn),
    height,
  ];
  if (kind === 'window') {
    return { at: from(520, 620), colour: [0.96, 1, 1.06], ambient: 0.35, spread: 0.3, glare: 2.6 };
  }
  if (kind === 'desk') {
    return { at: from(200, 360), colour: [1.12, 1, 0.82], ambient: 0.15, spread: 0.13, glare: 9 };
  }
  return { at: from(350, 1500), colour: [1.04, 1, 0.94], ambient: 0.45, spread: 0.12, glare: 5 };
}
