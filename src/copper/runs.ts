/** The runs of a mask, row by row, each with the region that it belongs to. Arrays of length `count` or more. */
export interface Runs {
  count: number;
  /** First pixel and the pixel after the last, as places in the picture. */
  from: Int32Array;
  to: Int32Array;
  /** 1..regions, in the order of the regions' first pixels. */
  region: Int32Array;
  regions: number;
}

/**
 * Runs of a mask and the regions that they make: union-find over runs that touch in neighbouring rows.
 * @param mask row-major, nonzero = inside, width*height
 * @param neighbours 4: pixels that share a side belong together; 8: a corner is enough
 * @source two-pass labelling of runs; K. Suzuki, I. Horiba, N. Sugie, CVIU 89 (2003), for the union-find (from memory)
 */
export function runsOf(mask: Uint8Array, width: number, height: number, neighbours: 4 | 8): Runs {
  const slack = neighbours === 8 ? 1 : 0;
  let from = new Int32Array(4096);
  let to = new Int32Array(4096);
  let parent = new Int32Array(4096);
  let count = 0;
  const rootOf = (n: number): number => {
    while (parent[n] !== n) n = parent[n] = parent[parent[n]];
    return n;
  };
  let above = 0;
  for (let j = 0; j < height; j++) {
    const first = count;
    const end = (j + 1) * width;
    let k = j * width;
    while (k < end) {
      while (k < end && !mask[k]) k++;
      if (k === end) break;
      if (count === from.length) [from, to, parent] = [longer(from), longer(to), longer(parent)];
      from[count] = k;
      while (k < end && mask[k]) k++;
      to[count] = k;
      parent[count] = count;
      const [left, right] = [from[count] - width - slack, k - width + slack];
      while (above < first && to[above] <= left) above++;
      for (let n = above; n < first && from[n] < right; n++) {
        // The older of two roots stays, so that a region is numbered by its first pixel.
        const [a, b] = [rootOf(count), rootOf(n)];
        if (a < b) parent[b] = a;
        else parent[a] = b;
      }
      count++;
    }
    above = first;
  }
  const region = new Int32Array(count);
  let regions = 0;
  for (let n = 0; n < count; n++) {
    const root = rootOf(n);
    region[n] = root === n ? ++regions : region[root];
  }
  return { count, from, to, region, regions };
}

function longer(list: Int32Array): Int32Array<ArrayBuffer> {
  const twice = new Int32Array(2 * list.length);
  twice.set(list);
  return twice;
}

/** Number of pixels of each region; [0] is empty. */
export function runSizes({ count, from, to, region, regions }: Runs): Int32Array {
  const sizes = new Int32Array(regions + 1);
  for (let n = 0; n < count; n++) sizes[region[n]] += to[n] - from[n];
  return sizes;
}
