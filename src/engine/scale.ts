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
  const across = tapsOf(from.width, to.width, channels);
  const down = tapsOf(from.height, to.height, 1);
  const length = from.width * channels;
  const isBlank = Array.from({ length: from.height }, (_, j) => isZero(data, j * length, (j + 1) * length));
  const row = new Float64Array(length);
  const narrow = new Float64Array(to.width * channels);
  const out = new Uint8Array(narrow.length * to.height);
  for (let j = 0; j < to.height; j++) {
    row.fill(0);
    let blank = true;
    for (const { place, share } of down) {
      if (isBlank[place[j]]) continue;
      blank = false;
      const part = share[j];
      for (let k = 0, p = place[j] * length; k < length; k++, p++) row[k] += part * data[p];
    }
    if (blank) continue;
    narrow.fill(0.5);
    for (const { place, share } of across)
      for (let k = 0; k < narrow.length; k++) narrow[k] += share[k] * row[place[k]];
    for (let k = 0, o = j * narrow.length; k < narrow.length; k++, o++) out[o] = narrow[k];
  }
  return out;
}

function isZero(data: Uint8Array, from: number, to: number): boolean {
  for (let k = from; k < to; k++) if (data[k]) return false;
  return true;
}

/** One source byte for each target byte along an axis, and its share; 0 where a target needs fewer than others. */
interface Tap {
  place: Int32Array;
  share: Float64Array;
}

/** The source bytes under each target byte, the first of each, the second and so on: a triangle at least one source pixel wide. */
function tapsOf(from: number, to: number, channels: number): Tap[] {
  const ratio = from / to;
  const reach = Math.max(1, ratio);
  const taps = Array.from({ length: Math.ceil(2 * reach) }, () => ({
    place: new Int32Array(to * channels),
    share: new Float64Array(to * channels),
  }));
  for (let k = 0; k < to; k++) {
    const middle = (k + 0.5) * ratio - 0.5;
    const first = Math.floor(middle - reach) + 1;
    const weights = taps.map((_, n) => Math.max(0, 1 - Math.abs(first + n - middle) / reach));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    taps.forEach(({ place, share }, n) => {
      const pixel = Math.min(from - 1, Math.max(0, first + n));
      for (let c = 0; c < channels; c++) {
        place[k * channels + c] = pixel * channels + c;
        share[k * channels + c] = weights[n] / total;
      }
    });
  }
  return taps;
}
