import type { CopperMask } from '../copper/index.ts';
import type { Box, Point } from '../geometry/index.ts';
import { clearances } from './clearance.ts';
import { cutSides } from './cutSides.ts';
import { includePixel, noPixels, toPx, type Frame, type PixelBox } from './frame.ts';
import { necksOf } from './necks.ts';
import { describePiece } from './piece.ts';
import { leastPiece } from './trace.ts';
import type { Clearance, Crossing, Piece, Traced } from './types.ts';

/**
 * Renews a trace after the mask has changed within a box: only the pieces that reach into the box are labelled and
 * described anew. The label map is taken over and changed in place, so the old `Traced` must not be used any more.
 * Crossings and faint lines outside of the box stay as they were told from the picture; those within it are dropped,
 * since there a hand has decided.
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
  const unchanged = new Set(kept.map(({ id }) => rename.get(id)!));
  const pieces = [
    ...kept.map((piece) => withId(piece, rename.get(piece.id)!)),
    ...fresh.map(({ id, box, area }) => describePiece(labels, rename.get(id)!, box, area, mask)),
  ].sort((a, b) => a.id - b.id);
  return {
    ...traced,
    pieces,
    necks: [
      ...traced.necks
        .filter(({ piece }) => !touched[piece])
        .map((neck) => ({ ...neck, piece: rename.get(neck.piece)! })),
      ...pieces.filter((_, n) => !unchanged.has(n + 1)).flatMap(necksOf),
    ],
    clearances: renewClearances(traced, pieces, unchanged, rename, around),
    crossings: traced.crossings
      .filter(({ at }) => !inBox(dirty, at))
      .flatMap((crossing) => laidAgain(crossing, labels, frame)),
    faint: traced.faint?.filter(({ at }) => !inBox(dirty, at)),
  };
}

function inBox({ x0, y0, x1, y1 }: Box, [x, y]: Point): boolean {
  return x >= x0 && x <= x1 && y >= y0 && y <= y1;
}

/** A crossing told of the pieces as they are labelled now. A cut that was opened is none any more where a side of it is gone. */
function laidAgain(crossing: Crossing, labels: Int32Array, frame: Frame): Crossing[] {
  const { at, along, widthMm, opened } = crossing;
  if (!opened || !along) return [{ ...crossing, piece: idAt(labels, frame, at) ?? 0 }];
  const [piece, other] = cutSides(labels, frame, { at, along, widthMm });
  return piece && other ? [{ ...crossing, piece, other }] : [];
}

/** mm within which clearances are told. */
const mostClearance = 4;

/** Clearances round what has changed are measured again, the others keep what was found. */
function renewClearances(
  { labels, clearances: before, ...frame }: Traced,
  pieces: Piece[],
  unchanged: Set<number>,
  rename: Map<number, number>,
  around: PixelBox,
): Clearance[] {
  const near = { ...around };
  for (const { id, box } of pieces) {
    if (unchanged.has(id)) continue;
    const { i0, j0, i1, j1 } = pixelsOf(box, frame);
    includePixel(near, i0, j0);
    includePixel(near, i1, j1);
  }
  const margin = Math.ceil(mostClearance * frame.pxPerMm);
  const window = { i0: near.i0 - margin, j0: near.j0 - margin, i1: near.i1 + margin, j1: near.j1 + margin };
  const found = clearances(labels, frame, mostClearance, window);
  const known = new Map(found.map((clearance) => [`${clearance.a} ${clearance.b}`, clearance]));
  for (const clearance of before) {
    const ids = [rename.get(clearance.a), rename.get(clearance.b)];
    if (ids.some((id) => id === undefined || !unchanged.has(id))) continue;
    const [a, b] = ids as [number, number];
    const key = a < b ? `${a} ${b}` : `${b} ${a}`;
    const again = known.get(key);
    if (again && again.mm <= clearance.mm) continue;
    known.set(
      key,
      a < b
        ? { ...clearance, a, b }
        : { a: b, b: a, atA: clearance.atB, atB: clearance.atA, mm: clearance.mm },
    );
  }
  return [...known.values()].sort((p, q) => p.mm - q.mm);
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

/** Takes the labels off all touched pieces; returns places to label again from: where their rows of copper begin, and the box. */
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
    const { i0, j0, i1, j1 } = pixelsOf(box, frame);
    for (let j = j0; j <= j1; j++) {
      for (let k = j * frame.width + i0, end = j * frame.width + i1; k <= end; k++) {
        if (labels[k] !== id) continue;
        labels[k] = 0;
        if (copper[k] && !copper[k - 1]) free.push(k);
      }
    }
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
  const fresh: Fresh[] = [];
  let id = highest;
  const least = leastPiece * frame.pxPerMm ** 2;
  const specks: Fresh[] = [];
  for (const seed of free) {
    if (labels[seed]) continue;
    const found = flood(labels, copper, seed, ++id, frame);
    (found.area >= least ? fresh : specks).push(found);
  }
  for (const speck of specks) {
    forBox(speck.box, frame.width, (k) => {
      if (labels[k] === speck.id) labels[k] = 0;
    });
  }
  return fresh;
}

/** Labels all unlabelled copper that hangs together with the seed, row by row. */
function flood(labels: Int32Array, copper: Uint8Array, seed: number, id: number, frame: Frame): Fresh {
  const { width, height } = frame;
  const box = noPixels();
  let area = 0;
  const seeds = [seed];
  for (let k = seeds.pop(); k !== undefined; k = seeds.pop()) {
    if (labels[k]) continue;
    const row = Math.floor(k / width) * width;
    let from = k;
    let to = k;
    while (from > row && copper[from - 1] && !labels[from - 1]) from--;
    while (to < row + width - 1 && copper[to + 1] && !labels[to + 1]) to++;
    labels.fill(id, from, to + 1);
    area += to - from + 1;
    includePixel(box, from - row, row / width);
    includePixel(box, to - row, row / width);
    for (const step of [row > 0 ? -width : 0, row / width < height - 1 ? width : 0]) {
      if (!step) continue;
      for (let n = from + step; n <= to + step; n++) {
        if (copper[n] && !labels[n] && (n === from + step || !copper[n - 1] || labels[n - 1])) seeds.push(n);
      }
    }
  }
  return { id, box, area };
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
