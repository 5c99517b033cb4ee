/** A window of a picture that a net reads at once, and the part of it that is kept; px. */
export interface Tile {
  /** What is read; may reach beyond the picture. */
  x: number;
  y: number;
  width: number;
  height: number;
  /** What is kept, inside the picture. */
  keep: { x0: number; y0: number; x1: number; y1: number };
}

/** The net halves its picture six times over, so its windows are whole multiples of this. */
const grain = 64;
/** Largest window: an A6 sheet with margins at 10 px/mm goes in one piece, an A3 in parts of bounded memory. */
const largest = 1536;
/** Half the overlap of neighbouring windows: past it the net's view hardly reaches. */
const rim = 160;

/** Windows that cover a picture. Each kept part lies `rim` within its window, save at the picture's own edge. */
export function tiles(width: number, height: number): Tile[] {
  const columns = spans(width);
  return spans(height).flatMap((row) =>
    columns.map((column) => ({
      x: column.from,
      y: row.from,
      width: column.length,
      height: row.length,
      keep: { x0: column.keepFrom, y0: row.keepFrom, x1: column.keepTo, y1: row.keepTo },
    })),
  );
}

function spans(size: number) {
  if (size <= largest) {
    return [{ from: 0, length: Math.ceil(size / grain) * grain, keepFrom: 0, keepTo: size }];
  }
  const count = Math.ceil((size - 2 * rim) / (largest - 2 * rim));
  const step = Math.ceil((size - 2 * rim) / count / grain) * grain;
  return Array.from({ length: count }, (_, k) => ({
    from: k * step,
    length: step + 2 * rim,
    keepFrom: k === 0 ? 0 : k * step + rim,
    keepTo: k === count - 1 ? size : (k + 1) * step + rim,
  }));
}
