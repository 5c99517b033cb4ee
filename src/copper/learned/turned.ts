import type { RgbPicture } from '../../engine/planes.ts';

/**
 * Ways to lay a picture anew that a net takes for another picture and that keep every pixel: as it is, its rows made columns,
 * upside down, and both.
 */
export const turns = ['upright', 'sideways', 'upside down', 'sideways back'] as const;
export type Turn = (typeof turns)[number];

/** The picture laid anew. */
export function turned(picture: RgbPicture, turn: Turn): RgbPicture {
  if (turn === 'upright') return picture;
  const { rgb } = picture;
  const out = new Uint8Array(rgb.length);
  const size = sizeOf(picture, turn);
  const { start, across, down } = walk(picture, turn);
  for (let j = 0, o = 0; j < size.height; j++) {
    let p = 3 * (start + j * down);
    for (let i = 0; i < size.width; i++, p += 3 * across) {
      out[o++] = rgb[p];
      out[o++] = rgb[p + 1];
      out[o++] = rgb[p + 2];
    }
  }
  return { ...size, rgb: out };
}

/** A map of the picture that `turned` gave, laid back as `picture` lies. */
export function turnedBack(
  map: Uint8Array,
  picture: { width: number; height: number },
  turn: Turn,
): Uint8Array {
  if (turn === 'upright') return map;
  const out = new Uint8Array(map.length);
  const size = sizeOf(picture, turn);
  const { start, across, down } = walk(picture, turn);
  for (let j = 0, m = 0; j < size.height; j++) {
    for (let i = 0, k = start + j * down; i < size.width; i++, k += across) out[k] = map[m++];
  }
  return out;
}

function sizeOf({ width, height }: { width: number; height: number }, turn: Turn) {
  return turn.startsWith('sideways') ? { width: height, height: width } : { width, height };
}

/** Where the turned picture's first pixel lies in the upright one, and the way to its next column and row there. */
function walk({ width, height }: { width: number; height: number }, turn: Turn) {
  const last = width * height - 1;
  if (turn === 'sideways') return { start: 0, across: width, down: 1 };
  if (turn === 'sideways back') return { start: last, across: -width, down: -1 };
  return turn === 'upside down'
    ? { start: last, across: -1, down: -width }
    : { start: 0, across: 1, down: width };
}
