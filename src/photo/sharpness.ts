import type { Photo } from './types.ts';

/** How far apart the rows and columns that are looked at lie: some 350 of each are enough. */
const lines = 350;
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
  const spreads: number[] = [];
  for (const { lengthPx, values } of sampledLines(photo))
    for (let at = 0; at < values.length; at += lengthPx) rises(values.subarray(at, at + lengthPx), spreads);
  if (spreads.length < 30) return undefined;
  spreads.sort((a, b) => a - b);
  return spreads[Math.floor(spreads.length * 0.2)];
}

/** Lightness along the rows that are looked at, one after another, and along the columns; gathered row by row, as memory lies. */
function sampledLines({ rgba, width, height }: Photo) {
  const rowStep = Math.max(1, Math.floor(height / lines));
  const columnStep = Math.max(1, Math.floor(width / lines));
  const rows = new Float32Array(Math.ceil(height / rowStep) * width);
  const columns = new Float32Array(Math.ceil(width / columnStep) * height);
  for (let y = 0, n = 0; y < height; y++) {
    const from = y * width * 4;
    for (let x = 0, k = y; x < width; x += columnStep, k += height) {
      const p = from + 4 * x;
      columns[k] = (rgba[p] + 2 * rgba[p + 1] + rgba[p + 2]) / 4;
    }
    if (y % rowStep) continue;
    for (let p = from; p < from + 4 * width; p += 4, n++)
      rows[n] = (rgba[p] + 2 * rgba[p + 1] + rgba[p + 2]) / 4;
  }
  return [
    { lengthPx: width, values: rows },
    { lengthPx: height, values: columns },
  ];
}

/** Collects the 10-90 % widths of the strong monotone ramps along one line of the picture. */
function rises(line: Float32Array, spreads: number[]): void {
  let start = 0;
  let before = line[0];
  for (let i = 1; i <= line.length; i++) {
    const step = line[i] - before;
    const climbed = before - line[start];
    const goesOn = (step > 0 && climbed >= 0) || (step < 0 && climbed <= 0);
    before = line[i];
    if (goesOn && i - start < longestRamp) continue;
    if (Math.abs(climbed) >= leastStep) spreads.push(width10to90(line, start, i - 1));
    start = i - 1;
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
