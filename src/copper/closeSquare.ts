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
    along.fill(0);
    if (j < height) spreadAlong(mask.subarray(j * width, (j + 1) * width), value, along, reach);
    const first = j - 2 * reach;
    const into = out.subarray(Math.max(0, j - reach) * width);
    for (let i = 0; i < width; i++) {
      if (along[i]) last[i] = j;
      if (j >= reach && last[i] >= first) into[i] = value;
    }
  }
  return out;
}

/** 1 where the value lies within reach along a row. */
function spreadAlong(row: Uint8Array, value: number, along: Uint8Array, reach: number): void {
  for (let from = row.indexOf(value); from >= 0;) {
    const end = row.indexOf(1 - value, from);
    const to = end < 0 ? row.length : end;
    along.fill(1, Math.max(0, from - reach), Math.min(row.length, to + reach));
    from = end < 0 ? -1 : row.indexOf(value, end);
  }
}
