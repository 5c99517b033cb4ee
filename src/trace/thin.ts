/**
 * Zhang-Suen thinning: the one-pixel-wide, 8-connected skeleton of a mask. Only the border that the last pass changed is
 * looked at again, so the cost follows the copper's area and not the picture's.
 * @source T. Y. Zhang, C. Y. Suen, "A fast parallel algorithm for thinning digital patterns", CACM 27(3) 1984.
 * @param mask row-major, 0 or 1, width*height; its outermost rows and columns must be 0
 */
export function thin(mask: Uint8Array, width: number, height: number): Uint8Array {
  const image = mask.slice();
  const around = [-width, -width + 1, 1, width + 1, width, width - 1, -1, -width - 1];
  const listed = new Uint8Array(width * height);
  let border: number[] = [];
  for (let k = width; k < width * (height - 1); k++) {
    if (image[k] && around.some((step) => !image[k + step])) {
      border.push(k);
      listed[k] = 1;
    }
  }
  let quiet = 0;
  for (let pass = 0; quiet < 2; pass ^= 1) {
    const gone = border.filter((k) => removable[pass][codeOf(image, k, width)]);
    quiet = gone.length ? 0 : quiet + 1;
    for (const k of gone) image[k] = 0;
    if (!gone.length) continue;
    border = border.filter((k) => image[k]);
    for (const k of gone) {
      for (const step of around) {
        const near = k + step;
        if (!image[near] || listed[near]) continue;
        listed[near] = 1;
        border.push(near);
      }
    }
  }
  return image;
}

/** The eight neighbours as bits: P2 (above) is bit 0, then clockwise to P9. */
function codeOf(image: Uint8Array, k: number, width: number): number {
  return (
    image[k - width] |
    (image[k - width + 1] << 1) |
    (image[k + 1] << 2) |
    (image[k + width + 1] << 3) |
    (image[k + width] << 4) |
    (image[k + width - 1] << 5) |
    (image[k - 1] << 6) |
    (image[k - width - 1] << 7)
  );
}

/** For each pass and each of the 256 neighbourhoods: may the pixel go? */
const removable = [0, 1].map((pass) =>
  Uint8Array.from({ length: 256 }, (_, code) => {
    const p = Array.from({ length: 8 }, (_unused, n) => (code >> n) & 1);
    const count = p.reduce((sum, bit) => sum + bit, 0);
    const rises = p.filter((bit, n) => !bit && p[(n + 1) % 8]).length;
    const [p2, , p4, , p6, , p8] = p;
    const sides = pass === 0 ? p2 * p4 * p6 + p4 * p6 * p8 : p2 * p4 * p8 + p2 * p6 * p8;
    return count >= 2 && count <= 6 && rises === 1 && sides === 0 ? 1 : 0;
  }),
);
