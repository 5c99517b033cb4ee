/**
 * Closes a mask by a square of 2 * reach + 1 pixels: fills what no such square fits into. Nothing lies beyond the picture.
 * @param mask row-major, 1 = inside, width*height
 * @source morphological closing; J. Serra, "Image Analysis and Mathematical Morphology", 1982
 */
export function closeSquare(mask: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  return spread(spread(mask, 1, width, height, reach), 0, width, height, reach);
}

/** The mask with one of its two values spread to all that lies within the square round such a pixel. */
function spread(mask: Uint8Array, value: 0 | 1, width: number, height: number, reach: number): Uint8Array {
  const out = new Uint8Array(mask.length).fill(1 - value);
  const along = new Uint8Array(width);
  // The last row in which the value was seen near each column.
  const last = new Int32Array(width).fill(-reach - 1);
  for (let j = 0; j < height + reach; j++) {
    if (j < height) {
      spreadAlong(mask, value, j * width, along, reach);
      for (let i = 0; i < width; i++) if (along[i]) last[i] = j;
    }
    const first = j - 2 * reach;
    for (let i = 0, k = (j - reach) * width; j >= reach && i < width; i++, k++)
      if (last[i] >= first) out[k] = value;
  }
  return out;
}

/** 1 where the value lies within reach along the row that begins at `from`. */
function spreadAlong(mask: Uint8Array, value: number, from: number, along: Uint8Array, reach: number): void {
  along.fill(0);
  // Pixels before `done` are settled; the next one of the value reaches back and forth.
  let done = 0;
  for (let i = 0; i < along.length; i++) {
    if (mask[from + i] !== value) continue;
    const end = Math.min(along.length, i + reach + 1);
    for (let n = Math.max(done, i - reach); n < end; n++) along[n] = 1;
    done = end;
  }
}
