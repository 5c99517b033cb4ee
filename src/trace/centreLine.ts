import type { Point } from '../geometry/index.ts';
import type { Frame, PixelBox } from './frame.ts';
import { toMm } from './frame.ts';
import { median, pathLength, resample, smoothPath, tangent } from './polyline.ts';
import { degrees, prune } from './prune.ts';
import { rayOut } from './ray.ts';
import { skeletonOf, type SkeletonEdge } from './skeleton.ts';
import type { CentreLine, StripEnd } from './types.ts';

/** mm between points of a centre-line. */
const step = 0.5;
/** mm: nothing in a card is wider; rays stop there. */
const widest = 20;

/** Centre-lines, widths and free ends of one piece. */
export function centreLines(
  labels: Int32Array,
  id: number,
  box: PixelBox,
  frame: Frame,
): { lines: CentreLine[]; ends: StripEnd[]; widthMm: number } {
  const { pxPerMm } = frame;
  const cast = (x: number, y: number, dx: number, dy: number): number =>
    rayOut(labels, frame, id, x, y, dx, dy, widest * pxPerMm);
  const radiusAt = (x: number, y: number): number => {
    let least = Infinity;
    for (let n = 0; n < 16; n++) {
      least = Math.min(least, cast(x, y, Math.cos((n * Math.PI) / 8), Math.sin((n * Math.PI) / 8)));
    }
    return least;
  };
  const shrink = Math.max(1, Math.round(pxPerMm / 5));
  const { nodes, edges } = prune(skeletonOf(labels, id, box, frame, shrink), radiusAt);
  const degree = degrees(edges, nodes.length);
  const discs = nodes.map(({ x, y }, n) =>
    degree[n] > 2 ? { x, y, r: radiusAt(x, y) + 0.3 * pxPerMm } : undefined,
  );
  const measured = edges.map((edge) => measure(edge, frame, cast, [discs[edge.from], discs[edge.to]]));
  const widthMm = median(measured.flatMap(({ widths }) => widths));
  const ends: StripEnd[] = [];
  const lines = edges.map((edge, n) => {
    const line = { piece: id, ...measured[n] };
    if (degree[edge.to] === 1) ends.push(reachEnd(line, frame, cast));
    if (degree[edge.from] === 1) {
      turn(line);
      ends.push(reachEnd(line, frame, cast));
      turn(line);
    }
    line.lengthMm = pathLength(line.path);
    return line;
  });
  return { lines, ends, widthMm };
}

type Cast = (x: number, y: number, dx: number, dy: number) => number;

/** The disc of copper round a junction, px: within it a width across one of its branches means nothing. */
type Disc = { x: number; y: number; r: number } | undefined;

/** Smooths one run, measures the copper across it and moves it to the middle. */
function measure(edge: SkeletonEdge, frame: Frame, cast: Cast, discs: Disc[]): Omit<CentreLine, 'piece'> {
  const { pxPerMm } = frame;
  const raw = edge.points.map(({ x, y }): Point => [x, y]);
  const path = smoothPath(resample(raw, step * pxPerMm), 3);
  const sides = path.map(([x, y], k) => {
    const [tx, ty] = tangent(path, k, 3);
    const own = !discs.some((disc) => disc && Math.hypot(x - disc.x, y - disc.y) < disc.r);
    return { left: cast(x, y, ty, -tx), right: cast(x, y, -ty, tx), nx: -ty, ny: tx, own };
  });
  const total = sides.map(({ left, right }) => left + right);
  const telling = total.filter((_, k) => sides[k].own);
  const usual = telling.length ? median(telling) : Math.min(...total);
  const centred = path.map(([x, y], k): Point => {
    const { left, right, nx, ny, own } = sides[k];
    const free = own && k > 0 && k < path.length - 1 && total[k] < 1.3 * usual;
    const shift = free ? (right - left) / 2 : 0;
    return toMm(frame, x + nx * shift, y + ny * shift);
  });
  const widths = total.map((width, k) => (sides[k].own ? width : usual) / pxPerMm);
  return { path: centred, widths, lengthMm: pathLength(centred) };
}

/**
 * Thinning stops half a width before a strip's end and may run into one of its corners: the last half width is replaced
 * by the straight way along the strip's axis to the border.
 */
function reachEnd(line: CentreLine, frame: Frame, cast: Cast): StripEnd {
  const { path, widths } = line;
  const widthMm = median(widths);
  const half = Math.round(widthMm / 2 / step);
  const last = path.length - 1;
  const from = Math.max(Math.min(1, last), last - Math.min(half + 2, last >> 1));
  const back = Math.max(0, from - Math.max(4, 3 * half));
  const [ax, ay] = path[back];
  const [bx, by] = path[from];
  const length = Math.hypot(bx - ax, by - ay);
  const out: Point = length > 0 ? [(bx - ax) / length, (by - ay) / length] : [1, 0];
  const x = (bx - frame.originMm[0]) * frame.pxPerMm;
  const y = (by - frame.originMm[1]) * frame.pxPerMm;
  const reach = cast(x, y, out[0], out[1]) / frame.pxPerMm;
  const at: Point = [bx + reach * out[0], by + reach * out[1]];
  path.length = from + 1;
  widths.length = from + 1;
  const more = Math.max(1, Math.round(reach / step));
  for (let n = 1; n <= more; n++) {
    path.push([bx + (out[0] * reach * n) / more, by + (out[1] * reach * n) / more]);
    widths.push(widths[from]);
  }
  return { piece: line.piece, at, out, widthMm };
}

function turn(line: CentreLine): void {
  line.path.reverse();
  line.widths.reverse();
}
