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
  const across = tapsOf(from.width, to.width);
  const down = tapsOf(from.height, to.height);
  const length = to.width * channels;
  const narrow = new Float32Array(length * from.height);
  for (let j = 0, o = 0; j < from.height; j++) {
    for (let i = 0; i < to.width; i++) {
      for (let c = 0; c < channels; c++, o++) {
        let sum = 0;
        for (let n = across.first[i]; n < across.first[i + 1]; n++)
          sum += across.share[n] * data[(j * from.width + across.place[n]) * channels + c];
        narrow[o] = sum;
      }
    }
  }
  const out = new Uint8Array(length * to.height);
  const row = new Float32Array(length);
  for (let j = 0; j < to.height; j++) {
    row.fill(0.5);
    for (let n = down.first[j]; n < down.first[j + 1]; n++) {
      const share = down.share[n];
      for (let k = 0, p = down.place[n] * length; k < length; k++, p++) row[k] += share * narrow[p];
    }
    out.set(row, j * length);
  }
  return out;
}

/** Source pixels and their shares; those of target pixel k stand from `first[k]` to before `first[k + 1]`. */
interface Taps {
  first: Int32Array;
  place: Int32Array;
  share: Float32Array;
}

/** For each target pixel the source pixels under it: a triangle at least one source pixel wide. */
function tapsOf(from: number, to: number): Taps {
  const ratio = from / to;
  const reach = Math.max(1, ratio);
  const first = new Int32Array(to + 1);
  const place: number[] = [];
  const share: number[] = [];
  for (let k = 0; k < to; k++) {
    const middle = (k + 0.5) * ratio - 0.5;
    let total = 0;
    for (let s = Math.ceil(middle - reach); s <= middle + reach; s++) {
      const weight = 1 - Math.abs(s - middle) / reach;
      if (weight <= 0) continue;
      place.push(Math.min(from - 1, Math.max(0, s)));
      share.push(weight);
      total += weight;
    }
    for (let n = first[k]; n < place.length; n++) share[n] /= total;
    first[k + 1] = place.length;
  }
  return { first, place: Int32Array.from(place), share: Float32Array.from(share) };
}
