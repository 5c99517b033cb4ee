import type { Card } from '../card/index.ts';
import type { State } from './types.ts';

/** How a lamp stands in a state, by topology alone: currents are power/'s. */
export type Standing = 'fed' | 'against' | 'dark';

/**
 * Which lamps lie on a way from the cell's plus to its minus, each lamp a one-way street from its + pad to its - pad.
 * At most two lamps in a row are counted: 3 V lights no longer chain.
 *
 * @returns standing by lamp id; every lamp is dark when the cell is open or shorted
 */
export function standings(card: Card, state: State, netOf: Record<string, string>): Map<string, Standing> {
  const out = new Map<string, Standing>(card.lamps.map(({ id }) => [id, 'dark']));
  const node = (pad: string) => state.nodes.findIndex((nets) => nets.includes(netOf[pad]));
  const plus = node('cell+');
  const minus = node('cell-');
  if (!state.closed.includes('cell') || plus < 0 || minus < 0 || plus === minus) return out;
  const lamps = card.lamps
    .map(({ id }) => ({ id, from: node(`${id}+`), to: node(`${id}-`) }))
    .filter(({ from, to }) => from >= 0 && to >= 0 && from !== to);
  for (const lamp of lamps) {
    if (lamp.from === plus && lamp.to === minus) out.set(lamp.id, 'fed');
    if (lamp.from === minus && lamp.to === plus) out.set(lamp.id, 'against');
  }
  for (const first of lamps) {
    if (first.from !== plus || first.to === minus) continue;
    for (const second of lamps) {
      if (second.from !== first.to || second.to !== minus) continue;
      out.set(first.id, 'fed');
      out.set(second.id, 'fed');
    }
  }
  return out;
}
