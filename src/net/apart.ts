import type { Case } from './case.ts';

/** Two pads, by name, that must never be on one net: the cell's faces or a lamp's own. */
export type Apart = readonly [string, string];

/** What would be joined that must stay apart if these two nets were one; the cell's faces first. */
export function keptApart({ card, wiring: { netOf } }: Case, one: string, two: string): Apart | undefined {
  const pairs: Apart[] = [['cell+', 'cell-'], ...card.lamps.map(({ id }): Apart => [`${id}+`, `${id}-`])];
  return pairs.find(([p, q]) => {
    const [m, n] = [netOf[p], netOf[q]];
    return m !== undefined && n !== undefined && ((m === one && n === two) || (m === two && n === one));
  });
}
