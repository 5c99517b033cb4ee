import { UndirectedGraph } from 'graphology';
import { connectedComponents } from 'graphology-components';
import { describe, expect, it } from 'vitest';
import { cardFrom, type CardInput } from '../../src/card/index.ts';
import type { CopperGraph } from '../../src/net/copperGraph.ts';
import { minCut, type Capacity } from '../../src/net/minCut.ts';
import { statesOf } from '../../src/net/states.ts';
import { netsOf } from '../../src/net/wiring.ts';
import { long } from '../long.ts';
import { seeded } from '../trace/creasedStrip.ts';

/** Independent of ours: graphology's connected components. */

interface Circuit {
  graph: CopperGraph;
  joins: { a: number; b: number }[];
  card: ReturnType<typeof cardFrom>;
}

/** Islands with pads at random, joins at random, up to six contacts between random islands. */
function randomCircuit(random: () => number): Circuit {
  const count = 1 + Math.floor(random() * 24);
  const any = () => Math.floor(random() * count);
  const nodeOfPad = new Map<string, number>();
  const contacts = Array.from({ length: Math.floor(random() * 7) }, (_, k) => {
    for (const side of ['a', 'b', 'c'].slice(0, 2 + Math.floor(random() * 2)))
      nodeOfPad.set(`C${k}${side}`, any());
    return {
      id: `C${k}`,
      how: random() < 0.5 ? ('press' as const) : ('stroke' as const),
      order: k + 1,
      at: [1, 1] as [number, number],
    };
  });
  nodeOfPad.set('cell+', any());
  nodeOfPad.set('cell-', any());
  for (let k = 0; k < 4; k++) for (const sign of '+-') nodeOfPad.set(`L${k}${sign}`, any());
  const card: CardInput = { format: 'foilproof/1', base: { width_mm: 50, height_mm: 50 }, contacts };
  return {
    graph: {
      stretches: [],
      nodes: count,
      cuts: [],
      nodeOfPad,
      islandOf: Int32Array.from({ length: count }, (_, k) => k),
      islands: Array.from({ length: count }, (_, k) => ({ piece: k + 1, areaMm2: 1 + random() })),
      islandAt: (piece) => piece - 1,
    },
    joins: Array.from({ length: Math.floor(random() * count) }, () => ({ a: any(), b: any() })),
    card: cardFrom({ ...card, cell: { at: [20, 20] } }, 'random'),
  };
}

/** Pads grouped by component, in a form that does not hang on names. */
function grouped(pads: Iterable<string>, of: (pad: string) => unknown): string[] {
  const groups = new Map<unknown, string[]>();
  for (const pad of pads) groups.set(of(pad), [...(groups.get(of(pad)) ?? []), pad]);
  return [...groups.values()].map((group) => group.sort().join(' ')).sort();
}

describe('nets and states of 10,000 random circuits', () => {
  it('agree with the connected components of a graph library', () => {
    const random = seeded(20261125);
    for (let n = 0; n < (long ? 10_000 : 4_000); n++) {
      const { graph, joins, card } = randomCircuit(random);
      const { nets, netOf } = netsOf(graph, joins);
      const reference = new UndirectedGraph();
      graph.islands.forEach((_, k) => reference.addNode(k));
      for (const { a, b } of joins) reference.mergeEdge(a, b);
      expect(grouped(graph.nodeOfPad.keys(), (pad) => netOf[pad])).toEqual(
        grouped(graph.nodeOfPad.keys(), componentsOf(reference, graph)),
      );
      for (const state of statesOf(card, nets, netOf)) {
        const closed = reference.copy() as UndirectedGraph;
        for (const id of state.closed.filter((each) => each !== 'cell')) {
          const sides = [...graph.nodeOfPad].filter(([pad]) => pad.startsWith(id)).map(([, node]) => node);
          for (const side of sides.slice(1)) closed.mergeEdge(sides[0], side);
        }
        const of = componentsOf(closed, graph);
        const node = (pad: string) => state.nodes.findIndex((list) => list.includes(netOf[pad]));
        expect(grouped(graph.nodeOfPad.keys(), node)).toEqual(grouped(graph.nodeOfPad.keys(), of));
        expect(state.shorted).toBe(state.closed.includes('cell') && of('cell+') === of('cell-'));
      }
    }
  });
});

function componentsOf(reference: UndirectedGraph, { nodeOfPad }: CopperGraph): (pad: string) => number {
  const of = new Map<string, number>();
  connectedComponents(reference).forEach((nodes, k) => nodes.forEach((node) => of.set(node, k)));
  return (pad) => of.get(String(nodeOfPad.get(pad)!))!;
}

describe('the cheapest cut', () => {
  it('parts source from sink and costs as little as the best of all cuts (every cut tried, 400 graphs of 8 nodes)', () => {
    const random = seeded(4);
    for (let n = 0; n < 400; n++) {
      const edges: Capacity[] = Array.from({ length: 14 }, (_, edge) => ({
        from: Math.floor(random() * 8),
        to: Math.floor(random() * 8),
        capacity: 0.1 + Math.floor(random() * 50) / 10,
        edge,
      }));
      const cost = (cut: (e: Capacity) => boolean) =>
        edges.filter((e) => e.from !== e.to && cut(e)).reduce((sum, e) => sum + e.capacity, 0);
      // Max-flow equals min-cut (Ford and Fulkerson 1956): all 64 ways to put six nodes on one of two sides.
      let least = Infinity;
      for (let side = 0; side < 64; side++) {
        const near = (node: number) => node === 0 || (node !== 7 && ((side >> (node - 1)) & 1) === 1);
        least = Math.min(
          least,
          cost((e) => near(e.from) !== near(e.to)),
        );
      }
      const cut = new Set(minCut(8, edges, 0, 7));
      expect(cost((e) => cut.has(e.edge))).toBeCloseTo(least, 9);
      const rest = new UndirectedGraph();
      for (let k = 0; k < 8; k++) rest.addNode(k);
      for (const e of edges) if (e.from !== e.to && !cut.has(e.edge)) rest.mergeEdge(e.from, e.to);
      const parts = connectedComponents(rest);
      expect(parts.find((part) => part.includes('0'))).not.toContain('7');
    }
  });
});
