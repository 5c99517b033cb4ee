import type { CopperMask } from '../copper/index.ts';
import type { Box } from '../geometry/index.ts';
import { clearances } from './clearance.ts';
import { includePixel, noPixels, toPx, type Frame, type PixelBox } from './frame.ts';
import { necksOf } from './necks.ts';
import { describePiece } from './piece.ts';
import { leastPiece } from './trace.ts';
import type { Piece, Traced } from './types.ts';

/**
 * Renews a trace after the mask has changed within a box: only the pieces that reach into the box are labelled and
 * described anew. The label map is taken over and changed in place, so the old `Traced` must not be used any more.
 * Crossings outside of the box stay as they were told from the picture; those within it are dropped, since there a
 * hand has decided.
 * @param mask `filled` as it is now
 * @param dirty mm, as `paintStroke` returns it
 */
export function retrace(traced: Traced, mask: CopperMask, dirty: Box): Traced {
  const { width, height, pxPerMm, originMm, labels } = traced;
  const frame: Frame = { width, height, pxPerMm, originMm };
  const around = pixelsOf(dirty, frame);
  const touched = new Uint8Array(traced.pieces.length + 1);
  forBox(around, width, (k) => (touched[labels[k]] = 1));
  touched[0] = 0;
  const free = clear(traced, touched, around, frame, mask.filled);
  const fresh = regrow(labels, mask.filled, free, frame, traced.pieces.length);
  const kept = traced.pieces.filter(({ id }) => !touched[id]);
  const rename = compact(labels, frame, kept, fresh);
  const pieces = [
    ...kept.map((piece) => withId(piece, rename.get(piece.id)!)),
    ...fresh.map(({ id, box, area }) => describePiece(labels, rename.get(id)!, box, area, frame)),
  ].sort((a, b) => a.id - b.id);
  return {
    ...traced,
    pieces,
    necks: pieces.flatMap(necksOf),
    clearances: clearances(labels, frame),
    crossings: traced.crossings
      .filter(({ at: [x, y] }) => x < dirty.x0 || x > dirty.x1 || y < dirty.y0 || y > dirty.y1)
      .map((crossing) => ({ ...crossing, piece: idAt(labels, frame, crossing.at) ?? 0 })),
  };
}

function idAt(labels: Int32Array, frame: Frame, at: readonly [number, number]): number | undefined {
  const [x, y] = toPx(frame, at);
  return labels[Math.floor(y) * frame.width + Math.floor(x)];
}

/** Pixels of a box in mm and one more all round, within the picture. */
function pixelsOf(box: Box, frame: Frame): PixelBox {
  const [x0, y0] = toPx(frame, [box.x0, box.y0]);
  const [x1, y1] = toPx(frame, [box.x1, box.y1]);
  return {
    i0: Math.max(0, Math.floor(x0) - 1),
    j0: Math.max(0, Math.floor(y0) - 1),
    i1: Math.min(frame.width - 1, Math.ceil(x1) + 1),
    j1: Math.min(frame.height - 1, Math.ceil(y1) + 1),
  };
}

function forBox({ i0, j0, i1, j1 }: PixelBox, width: number, call: (k: number) => void): void {
  for (let j = j0; j <= j1; j++) for (let k = j * width + i0; k <= j * width + i1; k++) call(k);
}

/** Takes the labels off all touched pieces; returns the pixels of copper that have to be labelled again. */
function clear(
  { pieces, labels }: Traced,
  touched: Uint8Array,
  around: PixelBox,
  frame: Frame,
  copper: Uint8Array,
): number[] {
  const free: number[] = [];
  for (const { id, box } of pieces) {
    if (!touched[id]) continue;
    forBox(pixelsOf(box, frame), frame.width, (k) => {
      if (labels[k] !== id) return;
      labels[k] = 0;
      if (copper[k]) free.push(k);
    });
  }
  forBox(around, frame.width, (k) => {
    if (copper[k] && !labels[k]) free.push(k);
  });
  return free;
}

interface Fresh {
  id: number;
  box: PixelBox;
  area: number;
}

/** Floods the freed copper, side by side only; specks get no label. */
function regrow(
  labels: Int32Array,
  copper: Uint8Array,
  free: number[],
  frame: Frame,
  highest: number,
): Fresh[] {
  const { width, height } = frame;
  const fresh: Fresh[] = [];
  const specks: number[] = [];
  let id = highest;
  for (const seed of free) {
    if (labels[seed]) continue;
    id++;
    const box = noPixels();
    const flood = [seed];
    labels[seed] = id;
    for (let n = 0; n < flood.length; n++) {
      const k = flood[n];
      const i = k % width;
      const j = (k - i) / width;
      includePixel(box, i, j);
      for (let side = 0; side < 4; side++) {
        const near = side === 0 ? k - 1 : side === 1 ? k + 1 : side === 2 ? k - width : k + width;
        if (side === 0 ? i === 0 : side === 1 ? i === width - 1 : side === 2 ? j === 0 : j === height - 1)
          continue;
        if (labels[near] || !copper[near]) continue;
        labels[near] = id;
        flood.push(near);
      }
    }
    if (flood.length >= leastPiece * frame.pxPerMm ** 2) fresh.push({ id, box, area: flood.length });
    else specks.push(...flood);
  }
  for (const k of specks) labels[k] = 0;
  return fresh;
}

/** Ids run 1..n without holes: the highest ids move into the places that have come free. */
function compact(labels: Int32Array, frame: Frame, kept: Piece[], fresh: Fresh[]): Map<number, number> {
  const boxes = new Map<number, PixelBox>();
  for (const { id, box } of kept) boxes.set(id, pixelsOf(box, frame));
  for (const { id, box } of fresh) boxes.set(id, box);
  const ids = [...boxes.keys()].sort((a, b) => a - b);
  const rename = new Map(ids.map((id) => [id, id]));
  const holes = Array.from({ length: ids.length }, (_, n) => n + 1).filter((id) => !boxes.has(id));
  for (const hole of holes) {
    const last = ids.pop()!;
    forBox(boxes.get(last)!, frame.width, (k) => {
      if (labels[k] === last) labels[k] = hole;
    });
    rename.set(last, hole);
  }
  return rename;
}

function withId(piece: Piece, id: number): Piece {
  if (piece.id === id) return piece;
  return {
    ...piece,
    id,
    lines: piece.lines.map((line) => ({ ...line, piece: id })),
    ends: piece.ends.map((end) => ({ ...end, piece: id })),
  };
}
