import type { Homography, Quad } from '../../geometry/index.ts';
import { homographyFromQuad } from '../homography.ts';
import type { WorkPicture } from './work.ts';

/** Places along a side, those of one stretch taken together, and how much of its length they cover. */
const stretches = 24;
const perStretch = 4;
const covered = 0.84;
/** mm between two depths; the first looked at, and the last as a share of the sheet's shorter side. */
const pitchMm = 0.4;
const firstMm = 2;
const lastShare = 0.3;
/** Steps are taken between means over so many depths on each side of them. */
const reach = 3;
/** Colours before and after a line are read this far from it, in depths. */
const aside = [2, 7] as const;
/** A line stands out by so many times what is usual at other depths, and by so many levels. */
const aboveUsual = 3;
const leastLevels = 1.5;
/** It may lean against the side by so many depths over its length. */
const leans = [-16, -12, -8, -5, -2, 0, 2, 5, 8, 12, 16];
/** And is seen on so much of the side. */
const leastShare = 0.6;

/** The figure within has the base's proportions to this share; rails of tape round a base that is not square have others. */
const mostOff = 0.035;
/** Widths of tape, mm. */
const tapeMm = [1.6, 9] as const;

type Size = { width: number; height: number };

/**
 * How clearly a figure of the base's proportions lies within a figure: each side is followed, further in, by a line of its own with
 * paper on both sides of it. That is how a base looks that lies on a larger sheet. On a base itself the first line inwards is tape.
 * @param figure work px
 * @returns the least share of a side that shows it, 0 where a side has none or together they have other proportions
 */
export function innerBorder(work: WorkPicture, figure: Quad, base: Size): number {
  const toPx = homographyFromQuad(figure, base);
  const lines = [0, 1, 2, 3].flatMap((side) => firstLine(profilesOf(work, toPx, base, side)) ?? []);
  if (lines.length < 4) return 0;
  const [top, right, bottom, left] = lines.map(({ depth }) => firstMm + depth * pitchMm);
  const ratio = (base.width - left - right) / base.width / ((base.height - top - bottom) / base.height);
  return Math.abs(Math.log(ratio)) > mostOff ? 0 : Math.min(...lines.map(({ share }) => share));
}

/** Mean colour by stretch and depth, three planes: `colours[plane][stretch * depths + depth]`. */
interface Profiles {
  depths: number;
  colours: Float32Array[];
}

function profilesOf(work: WorkPicture, m: Homography, base: Size, side: number): Profiles {
  const depths = Math.floor((lastShare * Math.min(base.width, base.height) - firstMm) / pitchMm);
  const colours = [0, 1, 2].map(() => new Float32Array(stretches * depths));
  for (let k = 0; k < stretches * perStretch; k++) {
    const along = (1 - covered) / 2 + (covered * (k + 0.5)) / (stretches * perStretch);
    const row = Math.floor(k / perStretch) * depths;
    for (let n = 0; n < depths; n++) {
      const [x, y] = placeIn(base, side, along, firstMm + n * pitchMm);
      const w = 1 / (m[6] * x + m[7] * y + m[8]);
      const i = Math.floor((m[0] * x + m[1] * y + m[2]) * w);
      const j = Math.floor((m[3] * x + m[4] * y + m[5]) * w);
      const p =
        Math.min(Math.max(j, 0), work.height - 1) * work.width + Math.min(Math.max(i, 0), work.width - 1);
      for (let c = 0; c < 3; c++) colours[c][row + n] += work.planes[c][p] / perStretch;
    }
  }
  return { depths, colours };
}

function placeIn({ width, height }: Size, side: number, along: number, depth: number): [number, number] {
  if (side === 0) return [along * width, depth];
  if (side === 1) return [width - depth, along * height];
  if (side === 2) return [(1 - along) * width, height - depth];
  return [depth, (1 - along) * height];
}

/** A line at a mean depth that leans by so many depths from one end of the side to the other. */
interface Leaning {
  depth: number;
  lean: number;
  share: number;
}

/** The first line inwards from a side, where that has paper on both sides. */
function firstLine(profiles: Profiles): Leaning | undefined {
  const steps = profiles.colours.map((plane) => stepsOf(plane, profiles.depths));
  const lines = leans.flatMap((lean) => linesIn(steps, profiles.depths, lean));
  if (lines.length === 0) return undefined;
  const first = Math.min(...lines.map(({ depth }) => depth));
  const line = lines
    .filter(({ depth }) => depth <= first + reach)
    .reduce((a, b) => (b.share > a.share ? b : a));
  return samePaper(profiles, line) && !isStrip(steps, profiles.depths, line) ? line : undefined;
}

function linesIn(steps: Float32Array[], depths: number, lean: number): Leaning[] {
  const means = Array.from({ length: depths }, (_, n) =>
    steps.map((plane) => meanAt(plane, depths, n, lean)),
  );
  const sizes = Float64Array.from(means, (v) => Math.hypot(...v));
  const usual = Float64Array.from(sizes.subarray(reach, depths - reach)).sort()[(depths - 2 * reach) >> 2];
  const least = aboveUsual * usual + leastLevels;
  const found: Leaning[] = [];
  for (let n = reach; n < depths - reach; n++) {
    if (sizes[n] < least || sizes[n] < sizes[n - 1] || sizes[n] < sizes[n + 1]) continue;
    const share = shareWith(steps, depths, n, lean, means[n]);
    if (share >= leastShare) found.push({ depth: n, lean, share });
  }
  return found;
}

/** The depth of a leaning line at a stretch, kept within those looked at. */
function depthAt(depth: number, lean: number, stretch: number, depths: number): number {
  const at = depth + Math.round(lean * ((stretch + 0.5) / stretches - 0.5));
  return Math.min(depths - 1, Math.max(0, at));
}

function stepsOf(plane: Float32Array, depths: number): Float32Array {
  const steps = new Float32Array(plane.length);
  for (let s = 0; s < stretches; s++)
    for (let n = reach; n <= depths - reach; n++) {
      let d = 0;
      for (let k = 0; k < reach; k++) d += plane[s * depths + n + k] - plane[s * depths + n - 1 - k];
      steps[s * depths + n] = d / reach;
    }
  return steps;
}

function meanAt(plane: Float32Array, depths: number, n: number, lean: number): number {
  let sum = 0;
  for (let s = 0; s < stretches; s++) sum += plane[s * depths + depthAt(n, lean, s, depths)] / stretches;
  return sum;
}

/** Share of the stretches whose own step goes the way of the mean one, and at least half as far. */
function shareWith(steps: Float32Array[], depths: number, n: number, lean: number, mean: number[]): number {
  const size = mean.reduce((sum, v) => sum + v * v, 0);
  let count = 0;
  for (let s = 0; s < stretches; s++) {
    const at = s * depths + depthAt(n, lean, s, depths);
    if (steps.reduce((sum, plane, c) => sum + plane[at] * mean[c], 0) > 0.5 * size) count++;
  }
  return count / stretches;
}

/** Whether the step is taken back within the width of a tape, as by a strip that mirrors something as pale as paper. */
function isStrip(steps: Float32Array[], depths: number, { depth, lean }: Leaning): boolean {
  const at = (n: number) => steps.map((plane) => meanAt(plane, depths, n, lean));
  const first = at(depth);
  const size = Math.hypot(...first);
  const last = Math.min(depths - reach - 1, depth + Math.round(tapeMm[1] / pitchMm));
  for (let n = depth + Math.round(tapeMm[0] / pitchMm); n <= last; n++) {
    const back = at(n);
    const crest = Math.hypot(...back) >= Math.max(Math.hypot(...at(n - 1)), Math.hypot(...at(n + 1)));
    if (crest && Math.hypot(...back.map((v, c) => v + first[c])) < 0.6 * size) return true;
  }
  return false;
}

function samePaper({ colours, depths }: Profiles, { depth, lean }: Leaning): boolean {
  const between = (from: number, to: number) =>
    colours.map((plane) => {
      const values: number[] = [];
      for (let s = 0; s < stretches; s++)
        for (let d = from; d < to; d++) values.push(plane[s * depths + depthAt(depth + d, lean, s, depths)]);
      return Float64Array.from(values).sort()[values.length >> 1];
    });
  const [l, a, b] = between(-aside[1], -aside[0]);
  const [l2, a2, b2] = between(aside[0], aside[1]);
  const tint = Math.hypot(a / (l + 12) - a2 / (l2 + 12), b / (l + 12) - b2 / (l2 + 12));
  return tint < 0.12 && Math.abs(l - l2) < 0.25 * l + 6;
}
