/** Connected regions of a mask. */
export interface Components {
  /** Region of each pixel, 1..count, 0 where the mask is 0; row-major. */
  labels: Int32Array;
  count: number;
}

/**
 * Labels the regions of a mask, two passes with union-find, numbered in the order of their first pixel.
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
  const parent: number[] = [0];
  const rootOf = (label: number): number => {
    while (parent[label] !== label) label = parent[label] = parent[parent[label]];
    return label;
  };
  const join = (label: number, near: number): number => {
    if (!near) return label;
    const root = rootOf(near);
    if (!label || root === label) return root;
    if (root < label) return (parent[label] = root);
    return (parent[root] = label);
  };
  for (let j = 0, k = 0; j < height; j++) {
    for (let i = 0; i < width; i++, k++) {
      if (!mask[k]) continue;
      let label = i ? join(0, labels[k - 1]) : 0;
      if (j) {
        label = join(label, labels[k - width]);
        if (neighbours === 8 && i) label = join(label, labels[k - width - 1]);
        if (neighbours === 8 && i + 1 < width) label = join(label, labels[k - width + 1]);
      }
      if (!label) parent.push((label = parent.length));
      labels[k] = label;
    }
  }
  const final = new Int32Array(parent.length);
  let count = 0;
  for (let label = 1; label < parent.length; label++) {
    const root = rootOf(label);
    final[label] = root === label ? ++count : final[root];
  }
  for (let k = 0; k < labels.length; k++) if (labels[k]) labels[k] = final[labels[k]];
  return { labels, count };
}

/** Number of pixels of each region; index 0 counts what lies outside of every region. */
export function sizesOf({ labels, count }: Components): Int32Array {
  const sizes = new Int32Array(count + 1);
  for (let k = 0; k < labels.length; k++) sizes[labels[k]]++;
  return sizes;
}
