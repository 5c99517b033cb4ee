import type { Card } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Attached } from '../parts/index.ts';
import type { Traced } from '../trace/index.ts';
import { copperGraph, type CopperGraph } from './copperGraph.ts';
import { pieceJoins, type PieceJoin } from './joins.ts';
import { between } from './distance.ts';
import { openings } from './openings.ts';
import type { Net } from './types.ts';
import { disjointSets } from './unionFind.ts';

/** Nets with the way from copper and pads to them. */
export interface Wiring {
  graph: CopperGraph;
  nets: Net[];
  netOf: Record<string, string>;
  netOfIsland: string[];
  joins: IslandJoin[];
}

/** Two islands that conduct though the mask does not join them. */
export interface IslandJoin {
  a: number;
  b: number;
  at: Point;
  why: PieceJoin['why'];
}

/** Nets: copper joined by what conducts at rest. */
export function wire(traced: Traced, attached: Attached, card: Card): Wiring {
  const graph = copperGraph(traced, attached.pads, openings(traced, attached, card));
  const told = pieceJoins(traced, card).map(({ a, b, atA, atB, why }) => ({
    a: graph.islandAt(a, atA),
    b: graph.islandAt(b, atB),
    at: between(atA, atB),
    why,
  }));
  const joins = [...told, ...beneathCell(graph, attached, card, told)];
  return { graph, joins, ...netsOf(graph, joins) };
}

/** Nets of the islands, the largest first. @param joins what holds islands together */
export function netsOf(
  graph: CopperGraph,
  joins: readonly { a: number; b: number }[],
): Pick<Wiring, 'nets' | 'netOf' | 'netOfIsland'> {
  const { islands } = graph;
  const sets = disjointSets(islands.length);
  for (const { a, b } of joins) sets.join(a, b);
  const groups = new Map<number, number[]>();
  islands.forEach((_, island) => {
    const root = sets.find(island);
    const group = groups.get(root);
    if (group) group.push(island);
    else groups.set(root, [island]);
  });
  const netOfIsland: string[] = [];
  const nets = [...groups.values()]
    .map((group) => ({ group, areaMm2: group.reduce((sum, island) => sum + islands[island].areaMm2, 0) }))
    .sort((a, b) => b.areaMm2 - a.areaMm2)
    .map(({ group, areaMm2 }, k): Net => {
      for (const island of group) netOfIsland[island] = `n${k + 1}`;
      return {
        id: `n${k + 1}`,
        pieces: [...new Set(group.map((island) => islands[island].piece))],
        pads: [],
        areaMm2,
      };
    });
  const netOf: Record<string, string> = {};
  for (const [pad, node] of graph.nodeOfPad) {
    const net = netOfIsland[graph.islandOf[node]];
    netOf[pad] = net;
    nets[Number(net.slice(1)) - 1].pads.push(pad);
  }
  return { nets, netOf, netOfIsland };
}

/** The cell's can joins whatever its lower face rests on, what belongs to the upper face's net excepted: that is a short. */
function beneathCell(
  graph: CopperGraph,
  { nest }: Attached,
  { cell }: Card,
  told: readonly IslandJoin[],
): IslandJoin[] {
  if (!cell || nest.length < 2) return [];
  const { netOf, netOfIsland } = netsOf(graph, told);
  const upper = netOf[`cell${cell.up}`];
  const islands = nest
    .map(({ piece, at }) => ({ island: graph.islandAt(piece, at), at }))
    .filter(({ island }) => upper === undefined || netOfIsland[island] !== upper);
  return islands
    .slice(1)
    .map(({ island, at }) => ({ a: islands[0].island, b: island, at, why: 'beneath cell' as const }));
}
