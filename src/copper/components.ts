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
  let parent = new Int32Array(1024);
  let made = 1;
  const rootOf = (label: number): number => {
    while (parent[label] !== label) label = parent[label] = parent[parent[label]];
    return label;
  };
  for (let j = 0, k = 0; j < height; j++) {
    for (let i = 0; i < width; i++, k++) {
      if (!mask[k]) continue;
      const left = i ? labels[k - 1] : 0;
      const up = j ? labels[k - width] : 0;
      let label = left || up;
      if (left && up && left !== up) label = join(parent, rootOf(left), rootOf(up));
      if (neighbours === 8 && j && !up) {
        const before = i ? labels[k - width - 1] : 0;
        const after = i + 1 < width ? labels[k - width + 1] : 0;
        if (!label) label = before || after;
        if (after && label !== after) label = join(parent, rootOf(label), rootOf(after));
      }
      if (!label) {
        if (made === parent.length) parent = grown(parent);
        parent[made] = label = made++;
      }
      labels[k] = label;
    }
  }
  const final = new Int32Array(made);
  let count = 0;
  for (let label = 1; label < made; label++) {
    const root = rootOf(label);
    final[label] = root === label ? ++count : final[root];
  }
  for (let k = 0; k < labels.length; k++) if (labels[k]) labels[k] = final[labels[k]];
  return { labels, count };
}

/** Joins two roots; the older one stays. */
function join(parent: Int32Array, a: number, b: number): number {
  if (a < b) return (parent[b] = a);
  return (parent[a] = b);
}

function grown(list: Int32Array): Int32Array<ArrayBuffer> {
  const longer = new Int32Array(2 * list.length);
  longer.set(list);
  return longer;
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
