import type { PixelBox } from './bitmap.ts';

/** Connected parts of a picture. Labels run from 1; 0 is none. */
export interface Labels {
  labels: Int32Array;
  count: number;
}

/** A connected set of pixels. */
export interface Part {
  box: PixelBox;
  /** Indices into the row-major picture. */
  pixels: number[];
}

/**
 * Parts of the 1-pixels: two sweeps with a union of equivalent labels.
 * @param corners whether pixels that touch at a corner only are one (8 neighbours) or not (4)
 * @source Rosenfeld and Pfaltz, "Sequential operations in digital picture processing", JACM 13 (1966)
 */
export function labelParts(on: Uint8Array, width: number, height: number, corners = true): Labels {
  const labels = new Int32Array(on.length);
  const parent = [0];
  for (let y = 0, i = 0; y < height; y++) {
    for (let x = 0; x < width; x++, i++) {
      if (!on[i]) continue;
      const left = x ? labels[i - 1] : 0;
      const up = y ? labels[i - width] : 0;
      let label = left || up;
      if (left && up && left !== up) label = unite(parent, left, up);
      if (corners && y && !up) {
        const upLeft = x ? labels[i - width - 1] : 0;
        const upRight = x < width - 1 ? labels[i - width + 1] : 0;
        label = join(parent, join(parent, label, upLeft), upRight);
      }
      if (!label) parent.push((label = parent.length));
      labels[i] = label;
    }
  }
  return numbered(labels, parent);
}

function join(parent: number[], a: number, b: number): number {
  if (!a || !b || a === b) return a || b;
  return unite(parent, a, b);
}

function unite(parent: number[], a: number, b: number): number {
  const ra = root(parent, a);
  const rb = root(parent, b);
  const low = Math.min(ra, rb);
  parent[ra] = parent[rb] = low;
  return low;
}

function root(parent: number[], label: number): number {
  while (parent[label] !== label) label = parent[label] = parent[parent[label]];
  return label;
}

/** Labels 1..count in reading order. */
function numbered(labels: Int32Array, parent: number[]): Labels {
  const name = new Int32Array(parent.length);
  let count = 0;
  for (let label = 1; label < parent.length; label++) {
    const r = root(parent, label);
    name[label] = r === label ? ++count : name[r];
  }
  for (let i = 0; i < labels.length; i++) labels[i] = name[labels[i]];
  return { labels, count };
}

/**
 * Parts of scattered pixels, those at most `reach` columns and rows apart being one.
 * @param pixels indices into the row-major picture
 */
export function clusters(pixels: number[], width: number, height: number, reach: number): Part[] {
  const waiting = new Uint8Array(width * height);
  for (const i of pixels) waiting[i] = 1;
  const parts: Part[] = [];
  for (const seed of pixels) {
    if (!waiting[seed]) continue;
    waiting[seed] = 0;
    const own = [seed];
    const box = { x0: width, y0: height, x1: 0, y1: 0 };
    for (let k = 0; k < own.length; k++) {
      const x = own[k] % width;
      const y = (own[k] - x) / width;
      widen(box, x, y);
      const x1 = Math.min(width - 1, x + reach);
      const y1 = Math.min(height - 1, y + reach);
      for (let j = Math.max(0, y - reach); j <= y1; j++) {
        for (let n = j * width + Math.max(0, x - reach); n <= j * width + x1; n++) {
          if (!waiting[n]) continue;
          waiting[n] = 0;
          own.push(n);
        }
      }
    }
    parts.push({ box, pixels: own });
  }
  return parts;
}

/** Makes a box hold a pixel. */
export function widen(box: PixelBox, x: number, y: number): void {
  if (x < box.x0) box.x0 = x;
  if (y < box.y0) box.y0 = y;
  if (x >= box.x1) box.x1 = x + 1;
  if (y >= box.y1) box.y1 = y + 1;
}
