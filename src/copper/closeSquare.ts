/**
 * Closes a mask by a square of 2 * reach + 1 pixels: fills what no such square fits into. Nothing lies beyond the picture.
 * @param mask row-major, 1 = inside, width*height
 * @source morphological closing; J. Serra, "Image Analysis and Mathematical Morphology", 1982
 */
export function closeSquare(mask: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  const outside = spread(mask, width, height, reach).map((v) => 1 - v);
  return spread(outside, width, height, reach).map((v) => 1 - v);
}

/** 1 where anything of the mask lies within the square round a pixel; counts of columns and rows run along with it. */
function spread(mask: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  const out = new Uint8Array(mask.length);
  const columns = new Uint16Array(width + 2 * reach + 1);
  const add = (row: number, sign: 1 | -1): void => {
    if (row < 0 || row >= height) return;
    for (let i = 0, k = row * width; i < width; i++, k++) columns[i + reach] += sign * mask[k];
  };
  for (let j = 0; j < reach; j++) add(j, 1);
  for (let j = 0; j < height; j++) {
    add(j + reach, 1);
    add(j - reach - 1, -1);
    let count = 0;
    for (let i = 0; i < 2 * reach; i++) count += columns[i];
    for (let i = 0, k = j * width; i < width; i++, k++) {
      count += columns[i + 2 * reach];
      out[k] = count > 0 ? 1 : 0;
      count -= columns[i];
    }
  }
  return out;
}
