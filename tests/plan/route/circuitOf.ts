import type { Card } from '../../../src/card/index.ts';

/** A card's nets as nodes; the cell, lamps and contacts as edges between them. */
export function circuitOf({ lamps }: Card): [string, string][] {
  const contacts = lamps.flatMap(({ intent }) => (typeof intent === 'object' ? [intent.contact] : []));
  return [
    ['plus', 'minus'],
    ...[...new Set(contacts)].map((contact): [string, string] => ['plus', contact]),
    ...lamps.map(({ intent }): [string, string] =>
      typeof intent === 'object' ? [intent.contact, 'minus'] : ['plus', 'minus'],
    ),
  ];
}

/** A circuit as text, the same whatever its contacts are called and in whichever order its parts come. */
export function nameOf(edges: readonly (readonly string[])[]): string {
  return edges
    .map(([a, b]) => `${a} ${b}`)
    .sort()
    .join(', ');
}
