import type { Point, Ring } from '../../src/geometry/index.ts';
import type { Build, BuiltStrip } from './build.ts';
import { hash, noise } from './random.ts';

/** What lies topmost at each place of the base, before lamps and cell. Row-major, gridPxPerMm to the mm. */
export interface Laid {
  width: number;
  height: number;
  /** 0 paper, 255 patch, else 1 + the number of the copper layer. */
  owner: Uint8Array;
  /** Slope of the foil in x and y (tangent of the tilt), from wrinkles and creases. */
  slopeX: Float32Array;
  slopeY: Float32Array;
}

export const gridPxPerMm = 20;
export const patchOwner = 255;

/** Lays patch and tapes one over the other; `wrinkle` scales the foil's slopes, 0 leaves it flat. */
export function lay(build: Build, wrinkle: number, seed: number): Laid {
  const width = Math.round(build.base.width_mm * gridPxPerMm);
  const height = Math.round(build.base.height_mm * gridPxPerMm);
  const size = width * height;
  const laid: Laid = {
    width,
    height,
    owner: new Uint8Array(size),
    slopeX: new Float32Array(size),
    slopeY: new Float32Array(size),
  };
  build.strips.forEach((strip, k) => {
    for (const { ring, before } of [build.patch, ...(build.morePatches ?? [])])
      if (strip.id === before) layRing(laid, ring, patchOwner, 0, seed);
    if (!strip.absent) layStrip(laid, strip, k + 1, wrinkle, seed + 101 * k);
  });
  build.slivers.forEach((s, k) =>
    layRing(laid, s.ring, build.strips.length + 1 + k, wrinkle, seed + 7001 + k),
  );
  return laid;
}

function layStrip(laid: Laid, strip: BuiltStrip, owner: number, wrinkle: number, seed: number): void {
  const half = strip.widthMm / 2;
  let before = 0;
  for (let i = 0; i + 1 < strip.path.length; i++) {
    const a = strip.path[i];
    const b = strip.path[i + 1];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const dir: Point = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
    const startsAtFold = i > 0;
    const endsAtFold = i + 2 < strip.path.length;
    eachPixel(laid, [a, b], half + 0.5, (x, y, at) => {
      const along = (x - a[0]) * dir[0] + (y - a[1]) * dir[1];
      const across = (y - a[1]) * dir[0] - (x - a[0]) * dir[1];
      const wobble = 0.1 * noise((before + along) * 0.35, 7.7 * Math.sign(across), seed);
      if (Math.abs(across) > half + wobble) return;
      const endWobble = 0.08 * noise(across * 1.3, 3.1, seed + 5);
      if (along < (startsAtFold ? -half : endWobble)) return;
      if (along > length + (endsAtFold ? half : endWobble)) return;
      if (isOut(strip, x, y, dir, seed)) return;
      laid.owner[at] = owner;
      setSlope(laid, at, before + along, across, x, y, wrinkle, seed);
    });
    before += length;
  }
}

/** Whether a cut or a tear took this place of the strip away. */
function isOut(strip: BuiltStrip, x: number, y: number, dir: Point, seed: number): boolean {
  for (const cut of strip.cuts) {
    const along = (x - cut.at[0]) * dir[0] + (y - cut.at[1]) * dir[1];
    const across = (y - cut.at[1]) * dir[0] - (x - cut.at[0]) * dir[1];
    if (Math.abs(across) > strip.widthMm) continue;
    const edge = along - across * cut.skew;
    if (Math.abs(edge) < cut.widthMm / 2 + 0.03 * noise(across * 2, 1.5, seed + 9)) return true;
  }
  for (const neck of strip.necks) {
    const along = (x - neck.at[0]) * dir[0] + (y - neck.at[1]) * dir[1];
    const across = Math.abs((y - neck.at[1]) * dir[0] - (x - neck.at[0]) * dir[1]);
    const open = Math.max(0, Math.abs(along) - neck.lengthMm / 2);
    if (across < strip.widthMm && across > neck.widthMm / 2 + 1.4 * open) return true;
  }
  return false;
}

function layRing(laid: Laid, ring: Ring, owner: number, wrinkle: number, seed: number): void {
  eachPixel(laid, ring, 0, (x, y, at) => {
    if (!inside(ring, x, y)) return;
    laid.owner[at] = owner;
    if (owner === patchOwner) laid.slopeX[at] = laid.slopeY[at] = 0;
    else setSlope(laid, at, x, y, x, y, wrinkle, seed);
  });
}

/** Facets between cross creases, crinkle cells of 1.7 mm, and a fine smooth waviness. */
function setSlope(
  laid: Laid,
  at: number,
  along: number,
  across: number,
  x: number,
  y: number,
  wrinkle: number,
  seed: number,
): void {
  if (wrinkle === 0) {
    laid.slopeX[at] = laid.slopeY[at] = 0;
    return;
  }
  const facet = Math.floor(
    (along + 0.6 * across * (hash(seed, 3, 1) - 0.5)) / 7 + 0.8 * noise(along / 9, 0.5, seed),
  );
  const cell = crinkle(x, y, seed);
  const fine = 0.07 * noise(x * 1.1, y * 1.1, seed + 31);
  const fineY = 0.07 * noise(x * 1.1, y * 1.1, seed + 67);
  laid.slopeX[at] =
    wrinkle * (0.15 * (hash(facet, 1, seed) - 0.5) + 0.19 * (hash(cell, 1, seed) - 0.5) + fine);
  laid.slopeY[at] =
    wrinkle * (0.15 * (hash(facet, 2, seed) - 0.5) + 0.19 * (hash(cell, 2, seed) - 0.5) + fineY);
}

/** Number of the nearest point of a jittered lattice: the foil's crinkle cell. */
function crinkle(x: number, y: number, seed: number): number {
  const size = 1.7;
  const ci = Math.floor(x / size);
  const cj = Math.floor(y / size);
  let best = Infinity;
  let found = 0;
  for (let j = cj - 1; j <= cj + 1; j++) {
    for (let i = ci - 1; i <= ci + 1; i++) {
      const dx = (i + hash(i, j, seed + 1)) * size - x;
      const dy = (j + hash(i, j, seed + 2)) * size - y;
      const d = dx * dx + dy * dy;
      if (d < best) {
        best = d;
        found = i * 4096 + j;
      }
    }
  }
  return found;
}

function eachPixel(
  laid: Laid,
  around: readonly Point[],
  marginMm: number,
  visit: (x: number, y: number, at: number) => void,
): void {
  const xs = around.map((p) => p[0]);
  const ys = around.map((p) => p[1]);
  const x0 = Math.max(0, Math.floor((Math.min(...xs) - marginMm) * gridPxPerMm));
  const x1 = Math.min(laid.width - 1, Math.ceil((Math.max(...xs) + marginMm) * gridPxPerMm));
  const y0 = Math.max(0, Math.floor((Math.min(...ys) - marginMm) * gridPxPerMm));
  const y1 = Math.min(laid.height - 1, Math.ceil((Math.max(...ys) + marginMm) * gridPxPerMm));
  for (let j = y0; j <= y1; j++) {
    for (let i = x0; i <= x1; i++) {
      visit((i + 0.5) / gridPxPerMm, (j + 0.5) / gridPxPerMm, j * laid.width + i);
    }
  }
}

/** Even-odd rule. */
export function inside(ring: Ring, x: number, y: number): boolean {
  let odd = false;
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [xi, yi] = ring[i];
    const [xj, yj] = ring[j];
    if (yi > y !== yj > y && x < ((xj - xi) * (y - yi)) / (yj - yi) + xi) odd = !odd;
  }
  return odd;
}
