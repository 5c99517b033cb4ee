/**
 * Closes a mask by a square of 2 * reach + 1 pixels: fills what no such square fits into. Nothing lies beyond the picture.
 * @param mask row-major, 1 = inside, width*height
 * @source morphological closing; J. Serra, "Image Analysis and Mathematical Morphology", 1982
 */
export function closeSquare(mask: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  return inverse(spread(inverse(spread(mask, width, height, reach)), width, height, reach));
}

function inverse(mask: Uint8Array): Uint8Array {
  const out = new Uint8Array(mask.length);
  for (let k = 0; k < out.length; k++) out[k] = 1 - mask[k];
  return out;
}

/** 1 where anything of the mask lies within the square round a pixel: along the rows, then down the columns. */
function spread(mask: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  const rows = new Uint8Array(mask.length);
  for (let j = 0; j < height; j++) {
    const end = (j + 1) * width;
    // Pixels before `done` are settled; the next inside pixel reaches back and forth.
    let done = j * width;
    for (let k = done; k < end; k++) {
      if (!mask[k]) continue;
      for (let n = Math.max(done, k - reach); n <= Math.min(end - 1, k + reach); n++) rows[n] = 1;
      done = k + reach + 1;
    }
  }
  const out = new Uint8Array(mask.length);
  // Rows that are seen within reach above and below, counted column by column as they come and go.
  const counts = new Uint16Array(width);
  const add = (row: number, sign: 1 | -1): void => {
    if (row < 0 || row >= height) return;
    for (let i = 0, k = row * width; i < width; i++, k++) counts[i] += sign * rows[k];
  };
  for (let j = 0; j < reach; j++) add(j, 1);
  for (let j = 0; j < height; j++) {
    add(j + reach, 1);
    add(j - reach - 1, -1);
    for (let i = 0, k = j * width; i < width; i++, k++) out[k] = counts[i] ? 1 : 0;
  }
  return out;
}
