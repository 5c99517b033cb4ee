import { endsOf, sets, type Graph } from './graph.ts';
import type { Element, Trouble } from './types.ts';

/** A conductor of this or more is an open contact, ohm. */
export const openOhm = 1e15;

/**
 * What a net cannot decide by itself: parts that reach no cell, shorted cells, lamps across nothing.
 * @param now the open elements with their present values; what is open now does not connect
 */
export function troublesOf(graph: Graph, now: readonly Element[]): Trouble[] {
  return [...afloat(graph, now), ...onOneNode(graph)];
}

function afloat({ open, nodes, nodeOf }: Graph, now: readonly Element[]): Trouble[] {
  const parts = sets(nodes);
  open.forEach(({ a, b }, i) => {
    const element = now[i];
    if (element?.kind !== 'resistor' || element.ohm < openOhm) parts.join(a, b);
  });
  const fed = new Set(open.flatMap(({ element, a }) => (element.kind === 'cell' ? [parts.top(a)] : [])));
  const islands = new Map<number, { elements: string[]; nodes: string[] }>();
  for (const { element, a } of open) {
    const part = parts.top(a);
    if (fed.has(part)) continue;
    const island = islands.get(part) ?? { elements: [], nodes: [] };
    if (element.kind === 'lamp') island.elements.push(element.id);
    islands.set(part, island);
  }
  if (islands.size === 0) return [];
  for (const [name, node] of nodeOf) islands.get(parts.top(node))?.nodes.push(name);
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
