import type { Photo } from './types.ts';

/** How far apart the rows and columns that are looked at lie: some 700 of each are enough. */
const lines = 700;
/** Steps smaller than this are paper grain or noise, not edges. Levels. */
const leastStep = 36;
const longestRamp = 40;

/**
 * The photograph's edge spread: the width over which a hard edge climbs from 10 % to 90 %, in px.
 * Strong steps along sampled rows and columns are measured; the sharpest fifth tells the lens and the focus, since
 * soft shadows and slanting edges only ever look wider, and grain is too faint to count.
 * @returns undefined when the picture has no strong edges at all
 * @source 10-90 % rise distance, ISO 12233 (from memory); the sampling is common practice, no source
 */
export function edgeSpreadPx(photo: Photo): number | undefined {
  const { width, height } = photo;
  const light = lightnessReader(photo);
  const spreads: number[] = [];
  const rowStep = Math.max(1, Math.floor(height / lines));
  const columnStep = Math.max(1, Math.floor(width / lines));
  for (let y = 0; y < height; y += rowStep) rises((i) => light(i, y), width, spreads);
  for (let x = 0; x < width; x += columnStep) rises((i) => light(x, i), height, spreads);
  if (spreads.length < 60) return undefined;
  spreads.sort((a, b) => a - b);
  return spreads[Math.floor(spreads.length * 0.2)];
}

function lightnessReader({ rgba, width }: Photo) {
  return (x: number, y: number): number => {
    const p = (y * width + x) * 4;
    return (rgba[p] + 2 * rgba[p + 1] + rgba[p + 2]) / 4;
  };
}

/** Collects the 10-90 % widths of the strong monotone ramps along one line of the picture. */
function rises(at: (i: number) => number, length: number, spreads: number[]): void {
  const line = new Float32Array(length);
  for (let i = 0; i < length; i++) line[i] = at(i);
  let start = 0;
  for (let i = 1; i <= length; i++) {
    const goesOn =
      i < length && (line[i] - line[i - 1]) * (line[i - 1] - line[start] || line[i] - line[i - 1]) > 0;
    if (goesOn && i - start < longestRamp) continue;
    const end = i - 1;
    if (Math.abs(line[end] - line[start]) >= leastStep) spreads.push(width10to90(line, start, end));
    start = end;
  }
}

function width10to90(line: Float32Array, start: number, end: number): number {
  const low = line[start] + 0.1 * (line[end] - line[start]);
  const high = line[start] + 0.9 * (line[end] - line[start]);
  return crossing(line, start, end, high) - crossing(line, start, end, low);
}

/** Where a monotone ramp passes a level, px, by linear interpolation. */
function crossing(line: Float32Array, start: number, end: number, level: number): number {
  const up = line[end] > line[start];
  for (let i = start; i < end; i++) {
    if (up ? line[i + 1] >= level : line[i + 1] <= level)
      return i + (level - line[i]) / (line[i + 1] - line[i]);
  }
  return end;
}
