import type { Card } from '../card/index.ts';
import type { Attached } from '../parts/index.ts';
import type { Traced } from '../trace/index.ts';
import { pieceJoins, type PieceJoin } from './joins.ts';
import type { Net } from './types.ts';
import { disjointSets } from './unionFind.ts';

/** Nets with the way from pieces and pads to them. */
export interface Wiring {
  nets: Net[];
  netOf: Record<string, string>;
  /** Net of each piece, by piece id. */
  netOfPiece: string[];
  joins: PieceJoin[];
}

/**
 * Nets: pieces joined by what conducts at rest.
 *
 * @param extra pieces taken as joined besides, to ask "what if this gap were closed?"
 */
export function wire(
  traced: Traced,
  attached: Attached,
  card: Card,
  extra: readonly { a: number; b: number }[] = [],
): Wiring {
  const joins = pieceJoins(traced, card);
  const sets = disjointSets(traced.pieces.length + 1);
  for (const { a, b } of [...joins, ...extra]) sets.join(a, b);
  const groups = new Map<number, number[]>();
  for (const { id } of traced.pieces) {
    const root = sets.find(id);
    groups.set(root, [...(groups.get(root) ?? []), id]);
  }
  const area = (ids: number[]) => ids.reduce((sum, id) => sum + traced.pieces[id - 1].areaMm2, 0);
  const ordered = [...groups.values()].sort((a, b) => area(b) - area(a));
  const netOfPiece: string[] = [];
  const nets = ordered.map((pieces, k): Net => {
    for (const id of pieces) netOfPiece[id] = `n${k + 1}`;
    return { id: `n${k + 1}`, pieces, pads: [], areaMm2: area(pieces) };
  });
  const netOf: Record<string, string> = {};
  for (const { pad, piece } of attached.pads) {
    if (piece === 0) continue;
    netOf[pad] = netOfPiece[piece];
    nets[Number(netOfPiece[piece].slice(1)) - 1].pads.push(pad);
  }
  return { nets, netOf, netOfPiece, joins };
}
