import { components } from './components.ts';
import { borderCoherence } from './coherence.ts';
import { squaredDistance } from './distance.ts';

/** mm: tape comes 2 to 8 mm wide; half of it may lie under something else, and blur adds a little. */
const narrowest = 1.2;
const widest = 9.5;

/** Mean coherence of the border under which a region is a blot, and from which on it is a strip. */
const lowCoherence = 0.5;
const highCoherence = 0.7;

/**
 * How much like strips of tape the regions of a mask are, 0..1 at each pixel: long, of one width, 2 to 8 mm. What is
 * wider (a shadow, a wash of paint, a sticker, the cell) is opened away first; what is left of a blot has no one width.
 * @param mask row-major, 1 = inside
 * @param into raised to the score where that is greater
 * @param weight greatest score that this mask may give
 * @param taught pixels known to be copper or paper: a region with either in it is so whatever its shape
 */
export function addStripScore(
  mask: Uint8Array,
  width: number,
  height: number,
  pxPerMm: number,
  into: Float32Array,
  weight = 1,
  taught?: { copper: readonly number[]; paper: readonly number[] },
): void {
  const depth = depthOf(mask, width, height);
  const slim = withoutWide(mask, depth, width, height, (widest / 2) * pxPerMm);
  const inner = slim === mask ? depth : depthOf(slim, width, height);
  const { labels, count } = components(slim, width, height, 4);
  const area = new Float64Array(count + 1);
  const ridge = new Float64Array(count + 1);
  const straight = new Float64Array(count + 1);
  const border = new Float64Array(count + 1);
  const coherence = borderCoherence(slim, width, height, Math.round(1.5 * pxPerMm));
  const sum = new Float64Array(count + 1);
  const squares = new Float64Array(count + 1);
  for (let j = 1; j < height - 1; j++) {
    for (let i = 1, k = j * width + 1; i < width - 1; i++, k++) {
      const id = labels[k];
      if (!id) continue;
      area[id]++;
      if (inner[k] <= 1) {
        border[id]++;
        straight[id] += coherence(k);
      }
      if (!isRidge(inner, k, width)) continue;
      ridge[id]++;
      sum[id] += inner[k];
      squares[id] += inner[k] * inner[k];
    }
  }
  const score = Float32Array.from(area, (pixels, id) => {
    if (!id || !ridge[id] || pixels < 6 * pxPerMm * pxPerMm) return 0;
    const half = sum[id] / ridge[id];
    const spread = Math.sqrt(Math.max(0, squares[id] / ridge[id] - half * half)) / half;
    const wide = (2 * half) / pxPerMm;
    if (wide < narrowest || wide > widest) return 0;
    const slender = pixels / (4 * half * half);
    const straightness = ramp(straight[id] / border[id], lowCoherence, highCoherence);
    return weight * ramp(slender, 1.5, 4) * ramp(-spread, -0.45, -0.28) * straightness;
  });
  for (const k of taught?.copper ?? []) if (labels[k]) score[labels[k]] = 1;
  for (const k of taught?.paper ?? []) if (labels[k]) score[labels[k]] = 0;
  for (let k = 0; k < labels.length; k++) if (score[labels[k]] > into[k]) into[k] = score[labels[k]];
}

const ramp = (v: number, low: number, high: number): number =>
  Math.max(0, Math.min(1, (v - low) / (high - low)));

/** Distance of each inner pixel to the outside, px. */
function depthOf(mask: Uint8Array, width: number, height: number): Float32Array {
  const outside = new Uint8Array(mask.length);
  for (let k = 0; k < outside.length; k++) outside[k] = 1 - mask[k];
  const depth = squaredDistance(outside, width, height);
  for (let k = 0; k < depth.length; k++) depth[k] = Math.sqrt(depth[k]);
  return depth;
}

/** The mask less all of it that a disc of the given radius fits into. */
function withoutWide(
  mask: Uint8Array,
  depth: Float32Array,
  width: number,
  height: number,
  radius: number,
): Uint8Array {
  let any = false;
  const core = new Uint8Array(mask.length);
  for (let k = 0; k < mask.length; k++) if (depth[k] > radius) any = (core[k] = 1) > 0;
  if (!any) return mask;
  const near = squaredDistance(core, width, height);
  const most = (radius + 1) ** 2;
  const slim = new Uint8Array(mask.length);
  for (let k = 0; k < slim.length; k++) if (mask[k] && near[k] > most) slim[k] = 1;
  return slim;
}

/** On the middle of its region: no neighbour lies clearly deeper. */
function isRidge(depth: Float32Array, k: number, width: number): boolean {
  const d = depth[k] + 0.3;
  return (
    depth[k - 1] <= d && depth[k + 1] <= d && depth[k - width] <= d && depth[k + width] <= d && depth[k] > 0
  );
}
