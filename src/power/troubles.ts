import { endsOf, type Graph } from './graph.ts';
import type { Trouble } from './types.ts';

/** What a net cannot decide by itself: parts that reach no cell, shorted cells, lamps across nothing. */
export function troublesOf(graph: Graph): Trouble[] {
  return [...afloat(graph), ...onOneNode(graph)];
}

function afloat({ open, partOf, nodeOf }: Graph): Trouble[] {
  const fed = new Set(open.filter(({ element }) => element.kind === 'cell').map(({ a }) => partOf[a]));
  const islands = new Map<number, { elements: string[]; nodes: string[] }>();
  for (const { element, a } of open) {
    const part = partOf[a] as number;
    if (fed.has(part)) continue;
    const island = islands.get(part) ?? { elements: [], nodes: [] };
    if (element.kind === 'lamp') island.elements.push(element.id);
    islands.set(part, island);
  }
  for (const [name, node] of nodeOf) islands.get(partOf[node] as number)?.nodes.push(name);
  return [...islands.values()].map((island) => ({ kind: 'afloat', ...island }));
}

function onOneNode({ closed }: Graph): Trouble[] {
  return closed
    .filter(({ kind }) => kind !== 'resistor')
    .map((element) => ({
      kind: element.kind === 'cell' ? 'cell-shorted' : 'lamp-on-one-node',
      elements: [element.id],
      nodes: [...new Set(endsOf(element))],
    }));
}
