/** A binary picture, row-major. */
export interface Binary {
  width: number;
  height: number;
  data: Uint8Array;
}

/** Intersection over union where `valid` is 1 (everywhere when absent). */
export function iou(a: Binary, b: Binary, valid?: Uint8Array): number {
  let both = 0;
  let either = 0;
  for (let i = 0; i < a.data.length; i++) {
    if (valid && !valid[i]) continue;
    if (a.data[i] && b.data[i]) both++;
    if (a.data[i] || b.data[i]) either++;
  }
  return either === 0 ? 1 : both / either;
}

/** What of a picture lies where `valid` is 1 (all when absent). */
export function within({ width, height, data }: Binary, valid?: Uint8Array): Binary {
  return { width, height, data: valid ? data.map((v, k) => (valid[k] ? v : 0)) : data };
}

/**
 * F measure of the boundaries: a boundary pixel counts as met when the other boundary comes within the radius
 * (Martin, Fowlkes, Malik 2004, without one-to-one assignment).
 */
export function boundaryF(mine: Binary, truth: Binary, radiusPx: number, valid?: Uint8Array): number {
  const a = boundary(mine, valid);
  const b = boundary(truth, valid);
  const nearA = dilate(a, mine.width, mine.height, radiusPx);
  const nearB = dilate(b, mine.width, mine.height, radiusPx);
  const precision = share(a, nearB);
  const recall = share(b, nearA);
  return precision + recall === 0 ? 0 : (2 * precision * recall) / (precision + recall);
}

function boundary(m: Binary, valid?: Uint8Array): Uint8Array {
  const { width, height, data } = m;
  const out = new Uint8Array(data.length);
  for (let j = 1; j + 1 < height; j++) {
    for (let i = 1; i + 1 < width; i++) {
      const at = j * width + i;
      if (!data[at] || (valid && !valid[at])) continue;
      const inner = data[at - 1] && data[at + 1] && data[at - width] && data[at + width];
      if (!inner) out[at] = 1;
    }
  }
  return out;
}

function dilate(points: Uint8Array, width: number, height: number, radius: number): Uint8Array {
  const out = new Uint8Array(points.length);
  const r = Math.ceil(radius);
  for (let at = 0; at < points.length; at++) {
    if (!points[at]) continue;
    const x = at % width;
    const y = (at - x) / width;
    for (let dy = -r; dy <= r; dy++) {
      if (y + dy < 0 || y + dy >= height) continue;
      for (let dx = -r; dx <= r; dx++) {
        if (dx * dx + dy * dy > radius * radius || x + dx < 0 || x + dx >= width) continue;
        out[at + dy * width + dx] = 1;
      }
    }
  }
  return out;
}

function share(points: Uint8Array, near: Uint8Array): number {
  let all = 0;
  let met = 0;
  for (let i = 0; i < points.length; i++) {
    if (!points[i]) continue;
    all++;
    if (near[i]) met++;
  }
  return all === 0 ? 1 : met / all;
}

/** Number of 8-connected regions of at least `least` pixels. */
export function regions(m: Binary, least: number): number {
  const { width, height, data } = m;
  const seen = new Uint8Array(data.length);
  const stack: number[] = [];
  let count = 0;
  for (let start = 0; start < data.length; start++) {
    if (!data[start] || seen[start]) continue;
    let size = 0;
    stack.push(start);
    seen[start] = 1;
    while (stack.length > 0) {
      const at = stack.pop() as number;
      size++;
      const x = at % width;
      const y = (at - x) / width;
      for (let j = Math.max(0, y - 1); j <= Math.min(height - 1, y + 1); j++) {
        for (let i = Math.max(0, x - 1); i <= Math.min(width - 1, x + 1); i++) {
          const next = j * width + i;
          if (!data[next] || seen[next]) continue;
          seen[next] = 1;
          stack.push(next);
        }
      }
    }
    if (size >= least) count++;
  }
  return count;
}
