/** Distance from (x, y) along the unit vector (dx, dy) to the border of the piece, px, to a quarter of a pixel; at most `most`. */
export function rayOut(
  labels: Int32Array,
  size: { width: number; height: number },
  id: number,
  x: number,
  y: number,
  dx: number,
  dy: number,
  most: number,
): number {
  const { width, height } = size;
  const inside = (t: number): boolean => {
    const i = Math.floor(x + t * dx);
    const j = Math.floor(y + t * dy);
    return i >= 0 && j >= 0 && i < width && j < height && labels[j * width + i] === id;
  };
  let t = 0;
  while (t < most && inside(t)) t += 1;
  if (t === 0 || t >= most) return Math.min(t, most);
  let low = t - 1;
  let high = t;
  for (let step = 0; step < 2; step++) {
    const middle = (low + high) / 2;
    if (inside(middle)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
