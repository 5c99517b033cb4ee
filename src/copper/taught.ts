import type { Point } from '../geometry/index.ts';
import type { RelativeLab } from './relative.ts';

/** mm round a tap that count as what was tapped. */
const tapReach = 1;
/** Paper's own scatter in L*, a*, b* against the local paper, and the least that is believed of tapped copper. */
const paperScatter = [7, 3.5, 4.5] as const;
const copperScatter = [10, 5, 5] as const;

/** Pixels tapped, and what the taps teach. */
export interface Taught {
  /** Log-likelihood ratio at each pixel, copper as tapped against paper. */
  cue: Float32Array;
  /** Pixels that are copper, and pixels that are paper, for certain. */
  copper: number[];
  paper: number[];
}

interface Gauss {
  mean: number[];
  scatter: number[];
}

/**
 * Learns from taps: each tap on the tape gives one Gaussian of colour, each tap on paper another beside the paper's own.
 * @param taps places in mm; the picture's origin and scale turn them to pixels
 */
export function teach(
  relative: RelativeLab,
  pxPerMm: number,
  originMm: Point,
  onCopper: readonly Point[],
  onPaper: readonly Point[],
): Taught | undefined {
  if (!onCopper.length && !onPaper.length) return undefined;
  const discs = (taps: readonly Point[]): number[][] =>
    taps.map((tap) => disc(relative, pxPerMm, originMm, tap));
  const copperDiscs = discs(onCopper).filter((pixels) => pixels.length > 2);
  const paperDiscs = discs(onPaper).filter((pixels) => pixels.length > 2);
  const copper = copperDiscs.map((pixels) => gauss(relative, pixels, copperScatter));
  const paper = [
    { mean: [100, 0, 0], scatter: [...paperScatter] },
    ...paperDiscs.map((pixels) => gauss(relative, pixels, paperScatter)),
  ];
  const { L, a, b } = relative;
  const best = (models: Gauss[], k: number): number => {
    let most = -Infinity;
    for (const model of models) most = Math.max(most, logDensity(model, L[k], a[k], b[k]));
    return most;
  };
  const cue = Float32Array.from(L, (_, k) => (copper.length ? best(copper, k) - best(paper, k) : -10));
  return { cue, copper: copperDiscs.flat(), paper: paperDiscs.flat() };
}

function disc({ width, height }: RelativeLab, pxPerMm: number, originMm: Point, tap: Point): number[] {
  const x = (tap[0] - originMm[0]) * pxPerMm;
  const y = (tap[1] - originMm[1]) * pxPerMm;
  const r = tapReach * pxPerMm;
  const found: number[] = [];
  for (let j = Math.max(0, Math.floor(y - r)); j <= Math.min(height - 1, y + r); j++) {
    for (let i = Math.max(0, Math.floor(x - r)); i <= Math.min(width - 1, x + r); i++) {
      if (Math.hypot(i + 0.5 - x, j + 0.5 - y) <= r) found.push(j * width + i);
    }
  }
  return found;
}

function gauss({ L, a, b }: RelativeLab, pixels: number[], least: readonly number[]): Gauss {
  const planes = [L, a, b];
  const mean = planes.map((plane) => pixels.reduce((sum, k) => sum + plane[k], 0) / pixels.length);
  const scatter = planes.map((plane, c) => {
    const squares = pixels.reduce((sum, k) => sum + (plane[k] - mean[c]) ** 2, 0);
    return Math.max(least[c], Math.sqrt(squares / pixels.length));
  });
  return { mean, scatter };
}

function logDensity({ mean, scatter }: Gauss, L: number, a: number, b: number): number {
  const far =
    ((L - mean[0]) / scatter[0]) ** 2 + ((a - mean[1]) / scatter[1]) ** 2 + ((b - mean[2]) / scatter[2]) ** 2;
  return -far / 2 - Math.log(scatter[0] * scatter[1] * scatter[2]);
}
