/**
 * Squared Euclidean distance of each pixel to the nearest pixel of a mask, exact, in px^2.
 * @source P. Felzenszwalb, D. Huttenlocher, "Distance Transforms of Sampled Functions", Theory of Computing 8 (2012).
 * @param mask row-major; nonzero = source, width*height
 */
export function squaredDistance(mask: Uint8Array, width: number, height: number): Float32Array {
  const far = 1e9;
  const out = new Float32Array(width * height);
  for (let i = 0; i < width; i++) {
    let gap = 1e4;
    for (let j = 0, k = i; j < height; j++, k += width) {
      gap = mask[k] ? 0 : gap + 1;
      out[k] = gap;
    }
    gap = 1e4;
    for (let j = height - 1, k = j * width + i; j >= 0; j--, k -= width) {
      gap = mask[k] ? 0 : gap + 1;
      const near = Math.min(gap, out[k]);
      out[k] = near >= 1e4 ? far : near * near;
    }
  }
  const at = new Int32Array(width + 2);
  const bound = new Float64Array(width + 3);
  const row = new Float32Array(width);
  for (let j = 0; j < height; j++) {
    const f = out.subarray(j * width, (j + 1) * width);
    // Nothing reaches past a source, so each stretch between two of them is looked at alone.
    for (let i = 0; i < width; i++) {
      if (f[i] === 0) continue;
      const from = Math.max(0, i - 1);
      while (i < width && f[i] > 0) i++;
      lowerEnvelope(f, from, Math.min(width, i + 1), row, at, bound);
    }
  }
  return out;
}

/** A stretch of a row: the lower envelope of the parabolas (x - i)^2 + f[i]. @param to after its last pixel */
function lowerEnvelope(
  f: Float32Array,
  from: number,
  to: number,
  copy: Float32Array,
  at: Int32Array,
  bound: Float64Array,
): void {
  for (let i = from; i < to; i++) copy[i] = f[i];
  let top = 0;
  at[0] = from;
  bound[0] = -Infinity;
  bound[1] = Infinity;
  for (let i = from + 1; i < to; i++) {
    let s = crossing(copy, at[top], i);
    while (s <= bound[top]) s = crossing(copy, at[--top], i);
    at[++top] = i;
    bound[top] = s;
    bound[top + 1] = Infinity;
  }
  for (let i = from, k = 0; i < to; i++) {
    while (bound[k + 1] < i) k++;
    const d = i - at[k];
    f[i] = d * d + copy[at[k]];
  }
}

const crossing = (f: Float32Array, p: number, q: number): number =>
  (f[q] + q * q - f[p] - p * p) / (2 * (q - p));
