import type { Homography } from '../../geometry/index.ts';
import { homographyFromQuad } from '../homography.ts';
import { unlikeliness } from './priors.ts';
import { supportPast } from './quads.ts';
import type { Candidate } from './quads.ts';
import { three } from './three.ts';
import type { WorkPicture } from './work.ts';

/** mm across the sides at which colours are compared: just inside, just outside, and further out. */
const inside = [0.7, 2.2] as const;
const outside = [-2.2, -0.7] as const;
const beyond = [-8, -4.5] as const;
const segments = 24;
const usualBase = { width: 125, height: 125 };

/**
 * What a candidate looks like, as numbers about 0..1. Worst, second worst and mean over the sides where a side has one.
 * The order is `featureNames`'.
 */
export function featuresOf(
  work: WorkPicture,
  c: Candidate,
  base: { width: number; height: number } | undefined,
): number[] {
  const size = base ?? usualBase;
  const at = reader(work, homographyFromQuad(c.corners, size));
  const paper = paperColour(at, size);
  const sides = [0, 1, 2, 3].map((side) => sideFeatures(at, size, side, paper));
  const extension = c.lines.map((line, side) => supportPast(c.corners, line, side));
  const share = (pick: (s: ReturnType<typeof sideFeatures>) => number) => three(sides.map(pick));
  return [
    ...three(c.support),
    ...share((s) => s.contrast),
    ...share((s) => s.size),
    ...share((s) => s.paper),
    ...share((s) => 1 - s.beyond),
    ...share((s) => s.even),
    ...three(extension.map((e) => 1 - e)),
    ...field(at, size, paper),
    Math.min(1, 10 * c.misfit),
    c.areaShare,
    Math.sqrt(c.areaShare),
    Math.max(...sides.map((s) => s.tape)),
    ...unlikeliness(work, c),
  ];
}

const named = ['support', 'contrast', 'size', 'paper', 'notBeyond', 'even', 'endsThere'];
export const featureNames = [
  ...named.flatMap((n) => [`${n}Least`, `${n}Second`, `${n}Mean`]),
  'paperWithin',
  'paperAround',
  'misfit',
  'area',
  'side',
  'tapeOutside',
  'blank',
  'offCentre',
];

type Colour = readonly [number, number, number];

/** Reads the work picture at places in mm, nearest pixel: its index, or -1 off the picture. */
interface Reader {
  planes: WorkPicture['planes'];
  pixel(x: number, y: number): number;
}

function reader({ width, height, planes }: WorkPicture, m: Homography): Reader {
  const [a, b, c, d, e, f, g, h, k] = m;
  const pixel = (x: number, y: number): number => {
    const w = 1 / (g * x + h * y + k);
    const i = Math.floor((a * x + b * y + c) * w);
    const j = Math.floor((d * x + e * y + f) * w);
    return i < 0 || j < 0 || i >= width || j >= height ? -1 : j * width + i;
  };
  return { planes, pixel };
}

/** Lightness and the two opponent planes at a place. */
function read({ planes, pixel }: Reader, x: number, y: number): Colour | undefined {
  const p = pixel(x, y);
  return p < 0 ? undefined : [planes[0][p], planes[1][p], planes[2][p]];
}

interface Size {
  width: number;
  height: number;
}

/** Hue and saturation of the paper: the median, over the rim, of the opponent planes relative to lightness. */
function paperColour(at: Reader, size: Size): Colour {
  const seen: Colour[] = [];
  for (let side = 0; side < 4; side++) {
    for (let k = 0; k < segments; k++) {
      for (const depth of [1, 2]) {
        const c = read(at, ...place(size, side, (k + 0.5) / segments, depth));
        if (c) seen.push(c);
      }
    }
  }
  const middle = (v: number[]) => Float64Array.from(v).sort()[v.length >> 1] ?? 0;
  return [
    middle(seen.map((c) => c[0])),
    middle(seen.map((c) => c[1] / (c[0] + 12))),
    middle(seen.map((c) => c[2] / (c[0] + 12))),
  ];
}

/** Place in mm `share` of the way along a side and `depth` mm inside it. */
function place({ width, height }: Size, side: number, share: number, depth: number): [number, number] {
  if (side === 0) return [share * width, depth];
  if (side === 1) return [width - depth, share * height];
  if (side === 2) return [(1 - share) * width, height - depth];
  return [depth, (1 - share) * height];
}

function sideFeatures(at: Reader, size: Size, side: number, paper: Colour) {
  let contrast = 0;
  let steps = 0;
  let like = 0;
  let again = 0;
  let even = 0;
  let tape = 0;
  let count = 0;
  let last: Colour | undefined;
  for (let k = 0; k < segments; k++) {
    const within = band(at, size, side, k, inside);
    const out = band(at, size, side, k, outside);
    if (!within || !out) continue;
    count++;
    const step = difference(within, out);
    contrast += ramp(step, 2, 8);
    steps += Math.min(1, step / 60);
    like += 1 - ramp(tint(within, paper), 0.05, 0.2);
    // Paper outside and something else inside: the side of a strip of tape taken for the side of the sheet.
    if (isPaper(out, paper) && !isPaper(within, paper)) tape++;
    const far = band(at, size, side, k, beyond);
    if (far && difference(within, far) < 0.5 * step + 2) again++;
    if (last) even += 1 - ramp(difference(within, last), 4, 25);
    last = within;
  }
  const n = Math.max(1, count);
  const shown = count / segments;
  return {
    contrast: (shown * contrast) / n,
    size: (shown * steps) / n,
    paper: like / n,
    beyond: again / n,
    even: even / n,
    tape: tape / n,
  };
}

/** Mean colour of a patch along a side: one segment long, between two depths (mm, negative outside). */
function band(
  at: Reader,
  size: Size,
  side: number,
  k: number,
  [from, to]: readonly [number, number],
): Colour | undefined {
  const { planes, pixel } = at;
  let l = 0;
  let a = 0;
  let b = 0;
  for (let u = 0; u < 2; u++) {
    for (let v = 0; v < 2; v++) {
      const share = 0.03 + (0.94 * (k + (u + 0.5) / 2)) / segments;
      const [x, y] = place(size, side, share, from + ((to - from) * (v + 0.5)) / 2);
      const p = pixel(x, y);
      if (p < 0) return undefined;
      l += planes[0][p] / 4;
      a += planes[1][p] / 4;
      b += planes[2][p] / 4;
    }
  }
  return [l, a, b];
}

const difference = (a: Colour, b: Colour) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
const tint = (c: Colour, paper: Colour) =>
  Math.hypot(c[1] / (c[0] + 12) - paper[1], c[2] / (c[0] + 12) - paper[2]);
const isPaper = (c: Colour, paper: Colour) =>
  tint(c, paper) < 0.12 && Math.abs(c[0] - paper[0]) < 0.35 * paper[0] + 6;
const ramp = (v: number, low: number, high: number) => Math.min(1, Math.max(0, (v - low) / (high - low)));

/** Share of places that have the paper's colour: within the rectangle, and in a ring 15 mm wide round it. */
function field(at: Reader, { width, height }: Size, paper: Colour): [number, number] {
  const near = (c: Colour) => tint(c, paper) < 0.12 && Math.abs(c[0] - paper[0]) < 0.3 * paper[0] + 8;
  let within = 0;
  let all = 0;
  let around = 0;
  let ring = 0;
  const step = Math.max(width, height) / 24;
  for (let x = -15; x < width + 15; x += step) {
    for (let y = -15; y < height + 15; y += step) {
      const c = read(at, x, y);
      if (!c) continue;
      const inner = x > 1 && y > 1 && x < width - 1 && y < height - 1;
      if (inner) {
        all++;
        if (near(c)) within++;
      } else {
        ring++;
        if (near(c)) around++;
      }
    }
  }
  return [within / Math.max(1, all), around / Math.max(1, ring)];
}
