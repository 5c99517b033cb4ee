import { runsOf } from './runs.ts';

/** Connected regions of a mask. */
export interface Components {
  /** Region of each pixel, 1..count, 0 where the mask is 0; row-major. */
  labels: Int32Array;
  count: number;
}

/**
 * Labels the regions of a mask, numbered in the order of their first pixel.
 * @param mask row-major, nonzero = inside, width*height
 * @param neighbours 4: pixels that share a side belong together; 8: a corner is enough
 */
export function components(
  mask: Uint8Array,
  width: number,
  height: number,
  neighbours: 4 | 8 = 4,
): Components {
  const labels = new Int32Array(width * height);
  const { count, from, to, region, regions } = runsOf(mask, width, height, neighbours);
  for (let n = 0; n < count; n++) {
    const label = region[n];
    for (let k = from[n]; k < to[n]; k++) labels[k] = label;
  }
  return { labels, count: regions };
}

/** Number of pixels of each region; index 0 counts what lies outside of every region. */
export function sizesOf({ labels, count }: Components): Int32Array {
  const sizes = new Int32Array(count + 1);
  for (let k = 0; k < labels.length; k++) sizes[labels[k]]++;
  return sizes;
}

/** The pixels of each region in the order of the picture; [0] is empty. */
export function membersOf(regions: Components): Int32Array[] {
  const { labels, count } = regions;
  const sizes = sizesOf(regions);
  const ends = new Int32Array(count + 1);
  for (let label = 1; label <= count; label++) ends[label] = ends[label - 1] + sizes[label];
  const order = new Int32Array(ends[count]);
  const next = ends.slice();
  for (let k = labels.length - 1; k >= 0; k--) if (labels[k]) order[--next[labels[k]]] = k;
  return Array.from(ends, (end, label) => order.subarray(label ? ends[label - 1] : 0, end));
}
