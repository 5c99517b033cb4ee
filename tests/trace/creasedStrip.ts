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

const size = { width: 600, height: 160, pxPerMm: 10 };

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
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const facets = Array.from({ length: 120 }, () => ({
    x: random() * width,
    y: random() * height,
    light: reflected(random),
    tint: 0.85 + 0.3 * random(),
  }));
  const creases = Array.from({ length: 14 }, () => ({
    x: random() * width,
    slope: (random() - 0.5) * (random() < 0.4 ? 0.3 : 4),
    half: 0.5 + random(),
    gain: random() < 0.5 ? 0.25 : 2.5,
  }));
  const tilt = random() * 0.5 - 0.25;
  const gapX = 200 + 200 * random();
  const gapSlope = (random() - 0.5) * 0.5;
  const top = 80 - widthMm * 5;
  const wobble = Array.from({ length: 4 }, () => ({
    f: 0.01 + 0.04 * random(),
    p: random() * 7,
    a: 0.6 * random(),
  }));
  const truth = new Uint8Array(width * height);
  const light = new Float32Array(width * height * 3);
  const wash = papers[paper];
  for (let j = 0, k = 0; j < height; j++) {
    for (let i = 0; i < width; i++, k++) {
      const edge = wobble.reduce((sum, { f, p, a }) => sum + a * Math.sin(f * i + p), 0);
      const onTape = j + 0.5 > top + edge && j + 0.5 < top + widthMm * 10 + edge;
      const inCut = Math.abs(i + 0.5 - gapX - gapSlope * (j - 80)) < gapMm * 5;
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
  const rgb = Uint8ClampedArray.from(seen, (v) => 255 * transfer(v) + 1.5 * normal());
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
    gapAt: [gapX / 10, 8],
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
    if (d < least) [nearest, least] = [facet, d];
  }
  let light = nearest.light * nearest.tint * (1 + 0.3 * Math.sin((i - nearest.x) / 5 + (j - nearest.y) / 9));
  for (const { x, slope, half, gain } of creases) {
    if (Math.abs(i - x - slope * (j - 80)) < half * Math.hypot(1, slope)) light *= gain;
  }
  return Math.max(0.01, light);
}

const transfer = (v: number): number => {
  const u = Math.min(1, Math.max(0, v));
  return u <= 0.0031308 ? 12.92 * u : 1.055 * u ** (1 / 2.4) - 0.055;
};

/** Separable Gauss of three interleaved planes. */
function blur(light: Float32Array, width: number, height: number, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const kernel = Array.from({ length: 2 * reach + 1 }, (_, n) => Math.exp(-0.5 * ((n - reach) / sigma) ** 2));
  const total = kernel.reduce((sum, v) => sum + v, 0);
  const pass = (from: Float32Array, dx: number, dy: number): Float32Array => {
    const to = new Float32Array(from.length);
    for (let j = 0, k = 0; j < height; j++) {
      for (let i = 0; i < width; i++) {
        for (let c = 0; c < 3; c++, k++) {
          let sum = 0;
          for (let n = -reach; n <= reach; n++) {
            const u = Math.min(width - 1, Math.max(0, i + n * dx));
            const v = Math.min(height - 1, Math.max(0, j + n * dy));
            sum += kernel[n + reach] * from[(v * width + u) * 3 + c];
          }
          to[k] = sum / total;
        }
      }
    }
    return to;
  };
  return pass(pass(light, 1, 0), 0, 1);
}

/** The strip's whole band as a filled mask, the cut bridged, so that the picture alone has to tell the cut. */
export function bridgedMask({ sheet, truth }: DrawnStrip): CopperMask {
  const { width, height } = sheet;
  const filled = truth.slice();
  for (let j = 0; j < height; j++) {
    for (let i = 0; i < width; i++) {
      if (!truth[j * width + i] && j > 80 - 24 && j < 80 + 24) filled[j * width + i] = 1;
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
