/**
 * Resamples a byte picture: means of whole areas when it shrinks, bilinear when it grows.
 * @param data row-major, `channels` bytes a pixel
 */
export function scaleTo(
  data: Uint8Array,
  channels: number,
  from: { width: number; height: number },
  to: { width: number; height: number },
): Uint8Array {
  const narrow = new Float32Array(to.width * from.height * channels);
  weights(from.width, to.width).forEach((taps, i) => {
    for (const [x, share] of taps) {
      for (let j = 0; j < from.height; j++) {
        const o = (j * to.width + i) * channels;
        const p = (j * from.width + x) * channels;
        for (let c = 0; c < channels; c++) narrow[o + c] += share * data[p + c];
      }
    }
  });
  const out = new Uint8Array(to.width * to.height * channels);
  const length = to.width * channels;
  const row = new Float32Array(length);
  weights(from.height, to.height).forEach((taps, j) => {
    row.fill(0.5);
    for (const [y, share] of taps) {
      for (let n = 0, p = y * length; n < length; n++, p++) row[n] += share * narrow[p];
    }
    out.set(row, j * length);
  });
  return out;
}

/** For each target pixel the source pixels under it and their shares; a triangle at least one source pixel wide. */
function weights(from: number, to: number): [number, number][][] {
  const ratio = from / to;
  const reach = Math.max(1, ratio);
  return Array.from({ length: to }, (_, k) => {
    const middle = (k + 0.5) * ratio - 0.5;
    const taps = new Map<number, number>();
    let total = 0;
    for (let s = Math.ceil(middle - reach); s <= middle + reach; s++) {
      const weight = 1 - Math.abs(s - middle) / reach;
      if (weight <= 0) continue;
      const place = Math.min(from - 1, Math.max(0, s));
      taps.set(place, (taps.get(place) ?? 0) + weight);
      total += weight;
    }
    return [...taps].map(([place, weight]): [number, number] => [place, weight / total]);
  });
}
