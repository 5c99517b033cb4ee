import type { Case } from './case.ts';
import { standings } from './flow.ts';

/** Lamps that some state lights. */
export function fedSomewhere({ card, states, wiring }: Case): Set<string> {
  const fed = new Set<string>();
  for (const state of states) {
    for (const [id, standing] of standings(card, state, wiring.netOf)) if (standing === 'fed') fed.add(id);
  }
  return fed;
}
