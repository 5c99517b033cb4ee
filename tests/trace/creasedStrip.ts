import { boxMean } from '../../src/copper/boxMean.ts';
import type { CopperMask } from '../../src/copper/index.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';

/** mulberry32: a small seeded generator of numbers in [0, 1). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export interface StripScene {
  seed: number;
  paper: 'white' | 'kraft';
  /** Paper seen through a cut across the strip, mm along it; 0 = sound. */
  gapMm: number;
  /** Standard deviation of the picture's blur, px. */
  blurPx?: number;
  widthMm?: number;
}

export interface DrawnStrip {
  sheet: SquaredSheet;
  /** The strip as laid, the cut out. */
  truth: Uint8Array;
  /** Where the cut is, mm. */
  gapAt: readonly [number, number];
}

const size = { width: 320, height: 120, pxPerMm: 10 };
/** Row of the strip's middle, px. */
const axis = 60;

/** Normal deviates to draw noise from (Box and Muller's). */
const noises = ((random) =>
  Float32Array.from(
    { length: 65536 },
    () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random()),
  ))(seeded(1));

/** Linear reflectances: white office paper and kraft card, near the values of common Lab tables (from memory). */
const papers = { white: [0.8, 0.8, 0.79], kraft: [0.45, 0.28, 0.16] } as const;
/** Copper's normal reflectance in linear sRGB, as rendering tables give it (from memory). */
const copper = [0.955, 0.637, 0.538] as const;

/**
 * One strip of tape, a creased mirror: each facet reflects another part of the room, from a dark corner to the lamp
 * itself, and bright or dark creases run over it at random, some right across. Uneven light, grain, blur and noise.
 */
export function drawStrip({ seed, paper, gapMm, blurPx = 0.8, widthMm = 5 }: StripScene): DrawnStrip {
  const random = seeded(seed);
  const { width, height } = size;
  const from = Math.floor(random() * noises.length);
  let drawn = from;
  const normal = (): number => noises[drawn++ & (noises.length - 1)];
  const facets = Array.from({ length: 48 }, () => ({
    x: random() * width,
    y: random() * height,
    light: reflected(random),
    tint: 0.85 + 0.3 * random(),
  }));
  const creases = Array.from({ length: 10 }, () => ({
    x: random() * width,
    slope: (random() - 0.5) * (random() < 0.4 ? 0.3 : 4),
    half: 0.5 + random(),
    gain: random() < 0.5 ? 0.25 : 2.5,
  }));
  const tilt = random() * 0.5 - 0.25;
  const gapX = 100 + 120 * random();
  const gapSlope = (random() - 0.5) * 0.5;
  const top = axis - widthMm * 5;
  const wobble = Array.from({ length: 4 }, () => ({
    f: 0.01 + 0.04 * random(),
    p: random() * 7,
    a: 0.6 * random(),
  }));
  const edges = Float32Array.from({ length: width }, (_, i) =>
    wobble.reduce((sum, { f, p, a }) => sum + a * Math.sin(f * i + p), 0),
  );
  const truth = new Uint8Array(width * height);
  const light = new Float32Array(width * height * 3);
  const wash = papers[paper];
  for (let j = 0, k = 0; j < height; j++) {
    for (let i = 0; i < width; i++, k++) {
      const edge = edges[i];
      const onTape = j + 0.5 > top + edge && j + 0.5 < top + widthMm * 10 + edge;
      const inCut = Math.abs(i + 0.5 - gapX - gapSlope * (j - axis)) < gapMm * 5;
      const shade = 0.75 * (1 + (tilt * (i - width / 2)) / width);
      const isCopper = onTape && !inCut;
      truth[k] = isCopper ? 1 : 0;
      const grain = 1 + 0.02 * normal();
      const shine = isCopper ? mirror(i, j, facets, creases) : 0;
      for (let c = 0; c < 3; c++) {
        light[3 * k + c] = isCopper ? copper[c] * shine : wash[c] * shade * grain;
      }
    }
  }
  const seen = blur(light, width, height, blurPx);
  const rgb = Uint8ClampedArray.from(seen, (v) => codes[Math.min(4095, v * 4095) | 0] + 1.5 * normal());
  return {
    sheet: {
      ...size,
      originMm: [0, 0],
      baseMm: { width: width / 10, height: height / 10 },
      rgb: new Uint8Array(rgb.buffer),
      toPhoto: [10, 0, 0, 0, 10, 0, 0, 0, 1],
      photoPxPerMm: 10,
    },
    truth,
    gapAt: [gapX / 10, axis / 10],
  };
}

/** What a facet mirrors: mostly the room, now and then the lamp. */
function reflected(random: () => number): number {
  const kind = random();
  if (kind < 0.35) return 0.02 + 0.1 * random();
  if (kind < 0.8) return 0.15 + 0.4 * random();
  return 0.7 + 1.5 * random();
}

function mirror(
  i: number,
  j: number,
  facets: readonly { x: number; y: number; light: number; tint: number }[],
  creases: readonly { x: number; slope: number; half: number; gain: number }[],
): number {
  let nearest = facets[0];
  let least = Infinity;
  for (const facet of facets) {
    const d = (facet.x - i) ** 2 + (facet.y - j) ** 2;
    if (d >= least) continue;
    nearest = facet;
    least = d;
  }
  let light = nearest.light * nearest.tint * (1 + 0.3 * Math.sin((i - nearest.x) / 5 + (j - nearest.y) / 9));
  for (const { x, slope, half, gain } of creases) {
    if (Math.abs(i - x - slope * (j - axis)) < half * Math.hypot(1, slope)) light *= gain;
  }
  return Math.max(0.01, light);
}

/** 8-bit codes, unrounded, of linear light 0..1 in 4096 steps (IEC 61966-2-1). */
const codes = Float32Array.from({ length: 4096 }, (_, n) => {
  const u = n / 4095;
  return 255 * (u <= 0.0031308 ? 12.92 * u : 1.055 * u ** (1 / 2.4) - 0.055);
});

/** Nearly a Gauss: as many means over 3 x 3 pixels, each of variance 2/3, as come nearest to it. */
function blur(light: Float32Array, width: number, height: number, sigma: number): Float32Array {
  const passes = Math.max(1, Math.round(1.5 * sigma * sigma));
  const out = new Float32Array(light.length);
  for (let c = 0; c < 3; c++) {
    let plane = new Float32Array(width * height).map((_, k) => light[3 * k + c]);
    for (let n = 0; n < passes; n++) plane = new Float32Array(boxMean(plane, width, height, 1));
    plane.forEach((v, k) => (out[3 * k + c] = v));
  }
  return out;
}

/** The strip's whole band as a filled mask, the cut bridged, so that the picture alone has to tell the cut. */
export function bridgedMask({ sheet, truth }: DrawnStrip): CopperMask {
  const { width, height } = sheet;
  const filled = truth.slice();
  for (let j = 0; j < height; j++) {
    for (let i = 0; i < width; i++) {
      if (!truth[j * width + i] && Math.abs(j - axis) < 24) filled[j * width + i] = 1;
    }
  }
  return {
    width,
    height,
    pxPerMm: sheet.pxPerMm,
    originMm: sheet.originMm,
    baseMm: sheet.baseMm,
    filled,
    strict: filled.slice(),
    likelihood: filled.map((v) => 255 * v),
    readable: 1,
    troubles: [],
    by: 'given',
  };
}
