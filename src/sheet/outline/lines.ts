import type { Point } from '../../geometry/index.ts';
import { runsNear } from './edges.ts';
import type { Edges } from './edges.ts';

/** A straight line nx x + ny y = rho with the edge evidence along it. Work px. */
export interface Line {
  nx: number;
  ny: number;
  rho: number;
  /** Place along the line of evidence[0]: t = -ny x + nx y. */
  t0: number;
  /** Running sum of evidence, one entry a px; evidence between t1 and t2 is the difference. */
  sum: Float32Array;
  votes: number;
}

const angleBins = 240;
/** In grains: bins of the normal form, and how near to a line its edge pixels lie. */
const rhoStep = 1.5;
const near = 2.2;
/** rad */
const nearAngle = 0.18;

/**
 * The strongest straight lines, by a Hough transform in which each edge pixel votes only about its own direction.
 * @param most how many lines at most
 * @param grain work px to which the edges are known: 1, or 4 for edges found at a quarter of the scale
 * @source R. O. Duda, P. E. Hart, CACM 15(1) 1972, the normal form; voting by gradient direction is common practice
 */
export function findLines(edges: Edges, width: number, height: number, most: number, grain: number): Line[] {
  const diagonal = Math.hypot(width, height);
  const bin = rhoStep * grain;
  const rhoBins = Math.ceil((2 * diagonal) / bin) + 2;
  const votes = vote(edges, rhoBins, diagonal, bin);
  const peaks = pickPeaks(votes, rhoBins, 18 / grain);
  const lines: Line[] = [];
  for (const { a, r } of peaks) {
    if (lines.length >= most) break;
    const angle = (a * Math.PI) / angleBins;
    const fitted = refine(edges, Math.cos(angle), Math.sin(angle), r * bin - diagonal, grain);
    if (!fitted) continue;
    if (lines.some((l) => sameLine(l, fitted, width, height, grain))) continue;
    lines.push({ ...fitted, votes: fitted.votes * grain, ...evidence(edges, fitted, diagonal, grain) });
  }
  return lines;
}

function vote(edges: Edges, rhoBins: number, diagonal: number, binPx: number): Float32Array {
  const votes = new Float32Array(angleBins * rhoBins);
  const cos = Float32Array.from({ length: angleBins }, (_, a) => Math.cos((a * Math.PI) / angleBins));
  const sin = Float32Array.from({ length: angleBins }, (_, a) => Math.sin((a * Math.PI) / angleBins));
  for (let i = 0; i < edges.count; i++) {
    const mid = Math.round((edges.angle[i] * angleBins) / Math.PI);
    for (let k = mid - 5; k <= mid + 5; k++) {
      const a = (k + angleBins) % angleBins;
      const rho = edges.x[i] * cos[a] + edges.y[i] * sin[a];
      const bin = (rho + diagonal) / binPx;
      const low = Math.floor(bin);
      const w = edges.weight[i];
      votes[a * rhoBins + low] += w * (1 - (bin - low));
      votes[a * rhoBins + low + 1] += w * (bin - low);
    }
  }
  return votes;
}

/** Highest bins, none within 3 bins of angle and 5 px of a higher one. */
function pickPeaks(votes: Float32Array, rhoBins: number, least: number): { a: number; r: number }[] {
  const peaks: { a: number; r: number; v: number }[] = [];
  for (let a = 0; a < angleBins; a++) {
    for (let r = 2; r < rhoBins - 2; r++) {
      const v = votes[a * rhoBins + r];
      if (v < least) continue;
      if (isPeak(votes, rhoBins, a, r, v)) peaks.push({ a, r, v });
    }
  }
  return peaks.sort((p, q) => q.v - p.v);
}

function isPeak(votes: Float32Array, rhoBins: number, a: number, r: number, v: number): boolean {
  for (let da = -2; da <= 2; da++) {
    const turned = a + da < 0 || a + da >= angleBins;
    const row = (a + da + angleBins) % angleBins;
    for (let dr = -2; dr <= 2; dr++) {
      const at = turned ? rhoBins - 1 - (r + dr) : r + dr;
      if (at < 0 || at >= rhoBins) continue;
      if (votes[row * rhoBins + at] > v) return false;
    }
  }
  return true;
}

/** Least-squares line through the edge pixels near a first guess, three rounds. */
function refine(edges: Edges, nx0: number, ny0: number, rho0: number, grain: number) {
  let nx = nx0;
  let ny = ny0;
  let rho = rho0;
  let votes = 0;
  for (const reach of [3.5 * grain, 2.5 * grain, near * grain]) {
    let sw = 0;
    let sx = 0;
    let sy = 0;
    let sxx = 0;
    let sxy = 0;
    let syy = 0;
    for (const [from, to] of runsNear(edges, Math.atan2(ny, nx), nearAngle)) {
      for (let i = from; i < to; i++) {
        const x = edges.x[i];
        const y = edges.y[i];
        if (Math.abs(nx * x + ny * y - rho) > reach) continue;
        const w = edges.weight[i];
        sw += w;
        sx += w * x;
        sy += w * y;
        sxx += w * x * x;
        sxy += w * x * y;
        syy += w * y * y;
      }
    }
    if (sw < 12 / grain) return undefined;
    const mx = sx / sw;
    const my = sy / sw;
    const cxx = sxx / sw - mx * mx;
    const cxy = sxy / sw - mx * my;
    const cyy = syy / sw - my * my;
    const along = 0.5 * Math.atan2(2 * cxy, cxx - cyy);
    nx = -Math.sin(along);
    ny = Math.cos(along);
    rho = nx * mx + ny * my;
    votes = sw;
  }
  return { nx, ny, rho, votes };
}

function sameLine(
  a: Line,
  b: Pick<Line, 'nx' | 'ny' | 'rho'>,
  width: number,
  height: number,
  grain: number,
): boolean {
  const dot = a.nx * b.nx + a.ny * b.ny;
  if (Math.abs(dot) < (grain > 1 ? 0.998 : 0.9994)) return false;
  const sign = Math.sign(dot);
  const x = width / 2;
  const y = height / 2;
  return Math.abs(a.nx * x + a.ny * y - a.rho - sign * (b.nx * x + b.ny * y - b.rho)) < 2.5 * grain;
}

function evidence(
  edges: Edges,
  line: { nx: number; ny: number; rho: number },
  diagonal: number,
  grain: number,
) {
  const length = Math.ceil(2 * diagonal) + 4;
  const t0 = -diagonal - 2;
  const own = new Float32Array(length);
  for (const [from, to] of runsNear(edges, Math.atan2(line.ny, line.nx), nearAngle)) {
    for (let i = from; i < to; i++) {
      const d = Math.abs(line.nx * edges.x[i] + line.ny * edges.y[i] - line.rho);
      if (d > near * grain) continue;
      const t = Math.round(-line.ny * edges.x[i] + line.nx * edges.y[i] - t0);
      const w = Math.min(1, 2 * edges.weight[i]);
      for (let k = t - grain; k <= t + grain; k++) if (own[k] < w) own[k] = w;
    }
  }
  const sum = new Float32Array(length + 1);
  for (let k = 0; k < length; k++) sum[k + 1] = sum[k] + own[k];
  return { t0, sum };
}

/** Where two lines meet; undefined when they are nearly parallel. */
export function meet(a: Line, b: Line): Point | undefined {
  const det = a.nx * b.ny - a.ny * b.nx;
  if (Math.abs(det) < 0.2) return undefined;
  return [(a.rho * b.ny - b.rho * a.ny) / det, (a.nx * b.rho - b.nx * a.rho) / det];
}

/** Mean evidence 0..1 along a line between two places on it. */
export function support(line: Line, p: Point, q: Point): number {
  const a = along(line, p);
  const b = along(line, q);
  const low = clamp(Math.round(Math.min(a, b)), line.sum.length);
  const high = clamp(Math.round(Math.max(a, b)), line.sum.length);
  return high > low ? (line.sum[high] - line.sum[low]) / (high - low) : 0;
}

const along = (l: Line, [x, y]: Point) => -l.ny * x + l.nx * y - l.t0;
const clamp = (v: number, length: number) => Math.min(Math.max(v, 0), length - 1);

/**
 * The lines of two scales in one list: a coarse line stays only where no fine one says the same, and a fine line
 * takes over what the coarse edges show along it.
 * @param grain of the coarse edges
 */
export function mergeScales(
  fine: Line[],
  coarse: Line[],
  coarseEdges: Edges,
  grain: number,
  { width, height }: { width: number; height: number },
): Line[] {
  const diagonal = Math.hypot(width, height);
  const merged = fine.map((line) => {
    const other = evidence(coarseEdges, line, diagonal, grain).sum;
    const sum = new Float32Array(line.sum.length);
    for (let k = 1; k < sum.length; k++) {
      sum[k] = sum[k - 1] + Math.max(line.sum[k] - line.sum[k - 1], other[k] - other[k - 1]);
    }
    return { ...line, sum };
  });
  return [...merged, ...coarse.filter((c) => !fine.some((f) => sameLine(f, c, width, height, 3)))];
}

/** Whether one line keeps within `off` px of another over the middle of the picture, and nearly to its direction. */
export function runsAlong(
  a: Line,
  b: Line,
  off: number,
  { width, height }: { width: number; height: number },
): boolean {
  const dot = a.nx * b.nx + a.ny * b.ny;
  if (Math.abs(dot) < 0.9945) return false;
  const foot: Point = [b.nx * b.rho, b.ny * b.rho];
  const t = -b.ny * (width / 2 - foot[0]) + b.nx * (height / 2 - foot[1]);
  const [x, y] = [foot[0] - b.ny * t, foot[1] + b.nx * t];
  return Math.abs(a.nx * x + a.ny * y - a.rho) < off;
}
