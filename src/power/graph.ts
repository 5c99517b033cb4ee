import type { Circuit, Element } from './types.ts';

/** A conductor of less than this is no element but one node: 1 microohm is a fifth of a thousandth of a neck of tape. */
export const leastOhm = 1e-6;

/** Elements by node number, conductors of no resistance taken in. */
export interface Graph {
  nodeOf: Map<string, number>;
  nodes: number;
  /** Elements whose two ends are different nodes. */
  open: { element: Element; a: number; b: number }[];
  /** Elements whose two ends are one node. */
  closed: Element[];
  /** Connected part of each node. */
  partOf: Int32Array;
  parts: number;
}

export function endsOf(element: Element): readonly [string, string] {
  return element.kind === 'resistor' ? [element.a, element.b] : [element.plus, element.minus];
}

/** Numbers the nodes, joins those that nothing separates, and finds the connected parts. */
export function graphOf({ elements }: Circuit): Graph {
  const names = new Map<string, number>();
  for (const element of elements)
    for (const name of endsOf(element)) if (!names.has(name)) names.set(name, names.size);
  const joined = sets(names.size);
  for (const element of elements) {
    const [a, b] = endsOf(element);
    if (element.kind === 'resistor' && element.ohm < leastOhm) joined.join(get(names, a), get(names, b));
  }
  const numbers = new Map<number, number>();
  const nodeOf = new Map<string, number>();
  for (const [name, i] of names) {
    const top = joined.top(i);
    if (!numbers.has(top)) numbers.set(top, numbers.size);
    nodeOf.set(name, get(numbers, top));
  }
  const placed = elements.map((element) => {
    const [a, b] = endsOf(element);
    return { element, a: get(nodeOf, a), b: get(nodeOf, b) };
  });
  const open = placed.filter(({ a, b }) => a !== b);
  const closed = placed.filter(({ a, b }) => a === b).map(({ element }) => element);
  return { nodeOf, nodes: numbers.size, open, closed, ...partsOf(numbers.size, open) };
}

function partsOf(nodes: number, open: Graph['open']): Pick<Graph, 'partOf' | 'parts'> {
  const parts = sets(nodes);
  for (const { a, b } of open) parts.join(a, b);
  const numbers = new Map<number, number>();
  const partOf = new Int32Array(nodes);
  for (let node = 0; node < nodes; node++) {
    const top = parts.top(node);
    if (!numbers.has(top)) numbers.set(top, numbers.size);
    partOf[node] = get(numbers, top);
  }
  return { partOf, parts: numbers.size };
}

/** Disjoint sets with path halving. @source Tarjan and van Leeuwen, J. ACM 31(2), 1984 */
export function sets(size: number) {
  const parent = Int32Array.from({ length: size }, (_, i) => i);
  const top = (i: number): number => {
    while (parent[i] !== i) {
      parent[i] = parent[parent[i] as number] as number;
      i = parent[i] as number;
    }
    return i;
  };
  return {
    top,
    join(a: number, b: number) {
      parent[top(a)] = top(b);
    },
  };
}

function get<K>(map: Map<K, number>, key: K): number {
  return map.get(key) as number;
}
