import type { Card } from '../card/index.ts';
import type { Net, State } from './types.ts';
import { disjointSets } from './unionFind.ts';

/**
 * The states a card can be in: at rest, the cell pressed, each contact with it, each step of the stroke, everything.
 * A stroke closes one contact at a time, in order.
 */
export function statesOf(card: Card, nets: Net[], netOf: Record<string, string>): State[] {
  const strokes = card.contacts.filter(({ how }) => how === 'stroke').sort((a, b) => orderOf(a) - orderOf(b));
  const presses = card.contacts.filter(({ how }) => how === 'press');
  const cell = card.cell ? ['cell'] : [];
  const closings: { name: string; closed: string[] }[] = [
    { name: 'at rest', closed: [] },
    ...(card.cell ? [{ name: 'cell pressed', closed: cell }] : []),
    ...presses.map(({ id }) => ({ name: `${id} pressed`, closed: [...cell, id] })),
    ...strokes.map(({ id }, k) => ({ name: `stroke ${k + 1}`, closed: [...cell, id] })),
  ];
  if (card.contacts.length > 1) {
    closings.push({ name: 'everything pressed', closed: [...cell, ...card.contacts.map(({ id }) => id)] });
  }
  return closings.map(({ name, closed }) => stateOf(name, closed, nets, netOf));
}

function orderOf(contact: Card['contacts'][number]): number {
  return contact.order ?? Number.MAX_SAFE_INTEGER;
}

function stateOf(name: string, closed: string[], nets: Net[], netOf: Record<string, string>): State {
  const index = new Map(nets.map(({ id }, k) => [id, k]));
  const sets = disjointSets(nets.length);
  for (const contact of closed) {
    if (contact === 'cell') continue;
    const sides = contactNets(contact, netOf);
    for (const side of sides.slice(1)) sets.join(index.get(sides[0])!, index.get(side)!);
  }
  const groups = new Map<number, string[]>();
  nets.forEach(({ id }, k) => groups.set(sets.find(k), [...(groups.get(sets.find(k)) ?? []), id]));
  const nodes = [...groups.values()];
  const nodeOf = (pad: string) => nodes.findIndex((node) => node.includes(netOf[pad]));
  const both = netOf['cell+'] !== undefined && netOf['cell-'] !== undefined;
  const shorted = both && closed.includes('cell') && nodeOf('cell+') === nodeOf('cell-');
  return { name, closed, nodes, shorted };
}

/** Nets of a contact's sides: pads 'C1a', 'C1b' ... */
export function contactNets(id: string, netOf: Record<string, string>): string[] {
  const found: string[] = [];
  for (let k = 0; k < 26; k++) {
    const net = netOf[`${id}${String.fromCharCode(97 + k)}`];
    if (net !== undefined) found.push(net);
  }
  return found;
}
