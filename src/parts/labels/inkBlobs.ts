import type { Box } from '../../geometry/index.ts';

/**
 * 8-connected blobs of a mask as pixel boxes, x1 and y1 exclusive.
 *
 * @param mask row-major, 1 = ink, width*height
 */
export function inkBlobs(mask: Uint8Array, width: number, height: number): Box[] {
  const seen = new Uint8Array(mask.length);
  const stack: number[] = [];
  const blobs: Box[] = [];
  for (let start = 0; start < mask.length; start++) {
    if (!mask[start] || seen[start]) continue;
    const box = { x0: width, y0: height, x1: 0, y1: 0 };
    seen[start] = 1;
    stack.push(start);
    while (stack.length > 0) {
      const i = stack.pop()!;
      const x = i % width;
      const y = (i - x) / width;
      grow(box, x, y);
      for (let ny = Math.max(0, y - 1); ny <= Math.min(height - 1, y + 1); ny++) {
        for (let nx = Math.max(0, x - 1); nx <= Math.min(width - 1, x + 1); nx++) {
          const j = ny * width + nx;
          if (!mask[j] || seen[j]) continue;
          seen[j] = 1;
          stack.push(j);
        }
      }
    }
    blobs.push(box);
  }
  return blobs;
}

function grow(box: Box, x: number, y: number): void {
  if (x < box.x0) box.x0 = x;
  if (y < box.y0) box.y0 = y;
  if (x >= box.x1) box.x1 = x + 1;
  if (y >= box.y1) box.y1 = y + 1;
}
