import type { Point } from '../geometry/index.ts';
import type { Piece } from '../trace/index.ts';
import { footOn, pathLength, squares } from './alongPath.ts';
import { sets } from './graph.ts';
import { foilMm, tapeOhm } from './tape.ts';

/** A conductor of tape between two nodes. */
export interface TapeRun {
  a: string;
  b: string;
  ohm: number;
}

/** Where something touches a piece: at one node, or with a joint across the strip, at the nodes on both its sides. */
export interface Anchor {
  before: string;
  after: string;
}

interface Cut {
  alongMm: number;
  anchor: Anchor;
}

/** Line ends nearer each other than this are one junction, mm. */
const sameJunctionMm = 0.3;

/**
 * A piece as a net of tape resistors along its centre-lines, cut where things touch it.
 * @param touches places where a lamp, cell, contact or joint touches; `across` puts a joint between the two sides
 * @returns the runs, and the anchor of each touch in the same order
 */
export function tapeGraph(
  piece: Piece,
  touches: readonly { at: Point; across: boolean }[],
): { runs: TapeRun[]; anchors: Anchor[] } {
  const hub = `piece ${piece.id}`;
  const cuts: Cut[][] = piece.lines.map(() => []);
  const anchors = touches.map(({ at, across }, i): Anchor => {
    const foot = footOn(piece.lines, at);
    if (!foot) return { before: hub, after: hub };
    const name = `${hub}.${i + 1}`;
    const anchor = { before: name, after: across ? `${name}'` : name };
    cuts[foot.line]?.push({ alongMm: foot.alongMm, anchor });
    return anchor;
  });
  const junctions = junctionNames(piece, hub);
  const runs = piece.lines.flatMap((line, i) => {
    const lengthMm = pathLength(line.path);
    const sorted = [...(cuts[i] as Cut[])].sort((p, q) => p.alongMm - q.alongMm);
    const [start, end] = junctions[i] as readonly [string, string];
    const stops = [
      { alongMm: 0, anchor: { before: start, after: start } },
      ...sorted,
      { alongMm: lengthMm, anchor: { before: end, after: end } },
    ];
    return stops.slice(1).map((stop, k): TapeRun => {
      const from = stops[k] as Cut;
      // 1 mm wide tape has as many ohm a mm as any tape has a square.
      const ohm = tapeOhm(squares(line, from.alongMm, stop.alongMm), 1, foilMm);
      return { a: from.anchor.after, b: stop.anchor.before, ohm };
    });
  });
  return { runs: runs.filter(({ a, b }) => a !== b), anchors };
}

/** A name for both ends of each line; ends at one junction share it, and no part of a piece is left apart. */
function junctionNames(piece: Piece, hub: string): (readonly [string, string])[] {
  const ends = piece.lines.flatMap(({ path }) => [path[0] as Point, path.at(-1) as Point]);
  const same = sets(ends.length);
  const whole = sets(ends.length);
  piece.lines.forEach((_, i) => whole.join(2 * i, 2 * i + 1));
  const pairs = nearPairs(ends);
  for (const { i, j, mm } of pairs) {
    if (mm > sameJunctionMm && whole.top(i) === whole.top(j)) continue;
    same.join(i, j);
    whole.join(i, j);
  }
  return piece.lines.map((_, i) => [`${hub}~${same.top(2 * i)}`, `${hub}~${same.top(2 * i + 1)}`] as const);
}

function nearPairs(ends: Point[]): { i: number; j: number; mm: number }[] {
  const pairs: { i: number; j: number; mm: number }[] = [];
  for (let i = 0; i < ends.length; i++)
    for (let j = i + 1; j < ends.length; j++) {
      const [a, b] = [ends[i] as Point, ends[j] as Point];
      pairs.push({ i, j, mm: Math.hypot(a[0] - b[0], a[1] - b[1]) });
    }
  return pairs.sort((p, q) => p.mm - q.mm);
}
