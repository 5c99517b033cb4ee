import type { Point } from '../geometry/index.ts';
import type { PadPlace } from '../parts/index.ts';
import type { CentreLine, Piece, Traced } from '../trace/index.ts';
import { disjointSets } from './unionFind.ts';

/** A run of centre-line between two nodes: a junction, an end, a pad or one side of a cut. */
export interface Stretch {
  from: number;
  to: number;
  piece: number;
  path: Point[];
  /** Width at each point of it, and the least, mm. */
  widths: number[];
  widthMm: number;
  lengthMm: number;
  /** Middle of the run that is about as narrow as its narrowest. */
  narrowest: Point;
}

/** Where a centre-line is taken as open though the mask runs on. */
export interface Cut {
  piece: number;
  at: Point;
  /** The nodes on its two sides; -1 where nothing is left there. */
  sides: [number, number];
}

/** A place where the copper does not conduct: a seen break, or what a lamp's body covers. */
export interface Opening {
  piece: number;
  at: Point;
  /** Points of the centre-line for which this holds are taken out; absent, the line is only parted at `at`. */
  covers?: (p: Point) => boolean;
}

/** Copper as a graph along its centre-lines. Islands are what is left connected after the cuts. */
export interface CopperGraph {
  stretches: Stretch[];
  nodes: number;
  cuts: Cut[];
  nodeOfPad: Map<string, number>;
  /** Island of each node, 0.. */
  islandOf: Int32Array;
  islands: { piece: number; areaMm2: number }[];
  islandAt: (piece: number, at: Point) => number;
}

interface Marks {
  gone: Uint8Array;
  /** Parted between point k - 1 and k, for the opening of that number. */
  parted: Map<number, number>;
  pads: { k: number; pad: string }[];
}

/** Lays pads on the centre-lines of their pieces and parts the lines at every opening. */
export function copperGraph(
  traced: Traced,
  pads: readonly PadPlace[],
  openings: readonly Opening[],
): CopperGraph {
  const graph = emptyGraph(traced);
  for (const piece of traced.pieces) {
    const marks = piece.lines.map(noMarks);
    openings.forEach((each, n) => each.piece === piece.id && mark(piece, marks, each, n));
    const loose = pads.filter((pad) => pad.piece === piece.id && !markPad(piece, marks, pad));
    graph.addPiece(piece, marks, loose);
  }
  return graph.finish(openings);
}

function noMarks({ path }: CentreLine): Marks {
  return { gone: new Uint8Array(path.length), parted: new Map(), pads: [] };
}

function mark(piece: Piece, marks: Marks[], opening: Opening, n: number): void {
  if (opening.covers) {
    const { covers } = opening;
    piece.lines.forEach(({ path }, l) => path.forEach((p, k) => covers(p) && (marks[l].gone[k] = 1)));
    return;
  }
  const place = nearestPoint(piece, marks, opening.at);
  if (place) marks[place.line].parted.set(Math.max(1, place.k), n);
}

function markPad(piece: Piece, marks: Marks[], { pad, at, middle }: PadPlace): boolean {
  const [ux, uy] = middle ? [at[0] - middle[0], at[1] - middle[1]] : [0, 0];
  const own = middle && (([x, y]: Point) => (x - middle[0]) * ux + (y - middle[1]) * uy > 0);
  const place = nearestPoint(piece, marks, at, own) ?? nearestPoint(piece, marks, at);
  if (place) marks[place.line].pads.push({ k: place.k, pad });
  return place !== undefined;
}

function nearestPoint(
  { lines }: Piece,
  marks: Marks[],
  [x, y]: Point,
  accept?: (p: Point) => boolean,
): { line: number; k: number } | undefined {
  let best: { line: number; k: number } | undefined;
  let least = Infinity;
  lines.forEach(({ path }, line) => {
    const { gone } = marks[line];
    for (let k = 0; k < path.length; k++) {
      const d = (path[k][0] - x) ** 2 + (path[k][1] - y) ** 2;
      if (d >= least || gone[k] || (accept && !accept(path[k]))) continue;
      least = d;
      best = { line, k };
    }
  });
  return best;
}

function emptyGraph(traced: Traced) {
  const stretches: Stretch[] = [];
  const nodeOfPad = new Map<string, number>();
  const sides = new Map<number, [number, number]>();
  const pieceOfNode: number[] = [];
  const newNode = (piece: number): number => pieceOfNode.push(piece) - 1;

  function addPiece(piece: Piece, marks: Marks[], loose: PadPlace[]): void {
    const before = pieceOfNode.length;
    const junctions = new Map<string, number>();
    const junction = (p: Point): number => {
      const key = `${p[0].toFixed(2)} ${p[1].toFixed(2)}`;
      const known = junctions.get(key) ?? newNode(piece.id);
      junctions.set(key, known);
      return known;
    };
    piece.lines.forEach((line, l) => addLine(line, marks[l], junction));
    if (pieceOfNode.length === before || loose.length > 0) {
      const whole = newNode(piece.id);
      for (const { pad } of loose) nodeOfPad.set(pad, whole);
    }
  }

  function addLine(line: CentreLine, { gone, parted, pads }: Marks, junction: (p: Point) => number): void {
    const { path, piece } = line;
    const last = path.length - 1;
    const stops = new Set(pads.map(({ k }) => k));
    let from = -1;
    let node = -1;
    for (let k = 0; k <= last; k++) {
      if (gone[k]) {
        if (from >= 0) close(line, from, k - 1, node, newNode(piece));
        from = -1;
        continue;
      }
      const cut = k > 0 ? parted.get(k) : undefined;
      if (cut !== undefined && from >= 0) {
        const before = from === k - 1 ? node : newNode(piece);
        close(line, from, k - 1, node, before);
        from = k;
        node = newNode(piece);
        sides.set(cut, [before, node]);
      }
      if (from < 0) {
        from = k;
        node = k === 0 ? junction(path[0]) : newNode(piece);
      }
      const stop = stops.has(k);
      if (!stop && k < last) continue;
      const here = k === from && k < last ? node : k === last ? junction(path[last]) : newNode(piece);
      close(line, from, k, node, here);
      for (const each of pads) if (each.k === k) nodeOfPad.set(each.pad, here);
      from = k;
      node = here;
    }
  }

  function close({ path, widths, piece }: CentreLine, a: number, b: number, from: number, to: number): void {
    if (from === to && a === b) return;
    let narrow = a;
    let lengthMm = 0;
    for (let k = a; k <= b; k++) {
      if (widths[k] < widths[narrow]) narrow = k;
      if (k > a) lengthMm += Math.hypot(path[k][0] - path[k - 1][0], path[k][1] - path[k - 1][1]);
    }
    stretches.push({
      from,
      to,
      piece,
      path: path.slice(a, b + 1),
      widths: widths.slice(a, b + 1),
      widthMm: widths[narrow],
      lengthMm,
      narrowest: path[middleOfRun(widths, narrow, a, b)],
    });
  }

  function finish(openings: readonly Opening[]): CopperGraph {
    const sets = disjointSets(pieceOfNode.length);
    for (const { from, to } of stretches) sets.join(from, to);
    const number = new Map<number, number>();
    const islandOf = Int32Array.from(pieceOfNode, (_, n) => {
      const root = sets.find(n);
      if (!number.has(root)) number.set(root, number.size);
      return number.get(root)!;
    });
    return {
      stretches,
      nodes: pieceOfNode.length,
      cuts: [...sides].map(([n, ends]) => ({ piece: openings[n].piece, at: openings[n].at, sides: ends })),
      nodeOfPad,
      islandOf,
      islands: islandsOf(traced, stretches, islandOf, pieceOfNode, number.size),
      islandAt: islandFinder(stretches, islandOf, pieceOfNode),
    };
  }
  return { addPiece, finish };
}

function middleOfRun(widths: readonly number[], narrow: number, a: number, b: number): number {
  const most = 1.3 * widths[narrow] + 0.1;
  let [from, to] = [narrow, narrow];
  while (from > a && widths[from - 1] <= most) from--;
  while (to < b && widths[to + 1] <= most) to++;
  return (from + to) >> 1;
}

/** An island's area is its share of the piece by length of centre-line. */
function islandsOf(
  traced: Traced,
  stretches: Stretch[],
  islandOf: Int32Array,
  pieceOfNode: number[],
  count: number,
): CopperGraph['islands'] {
  const length = new Float64Array(count);
  const whole = new Float64Array(traced.pieces.length + 1);
  for (const { from, piece, lengthMm } of stretches) {
    length[islandOf[from]] += lengthMm;
    whole[piece] += lengthMm;
  }
  const islands: CopperGraph['islands'] = [];
  pieceOfNode.forEach((piece, n) => {
    const area = traced.pieces[piece - 1].areaMm2;
    islands[islandOf[n]] = {
      piece,
      areaMm2: whole[piece] > 0 ? (area * length[islandOf[n]]) / whole[piece] : area,
    };
  });
  return islands;
}

/** Island of a piece's copper at a place: the one of the nearest stretch, where the piece is parted at all. */
function islandFinder(
  stretches: Stretch[],
  islandOf: Int32Array,
  pieceOfNode: number[],
): CopperGraph['islandAt'] {
  const islandsOfPiece: number[][] = [];
  pieceOfNode.forEach((piece, node) => {
    const list = (islandsOfPiece[piece] ??= []);
    if (!list.includes(islandOf[node])) list.push(islandOf[node]);
  });
  return (piece, [x, y]) => {
    const [only, ...others] = islandsOfPiece[piece];
    if (others.length === 0) return only;
    let island = only;
    let least = Infinity;
    for (const stretch of stretches) {
      if (stretch.piece !== piece) continue;
      for (const p of stretch.path) {
        const d = (p[0] - x) ** 2 + (p[1] - y) ** 2;
        if (d >= least) continue;
        least = d;
        island = islandOf[stretch.from];
      }
    }
    return island;
  };
}
