import type { Card } from '../card/index.ts';
import { lampPower } from './brightness.ts';
import { familyOf } from './lampTable.ts';
import { solve } from './solve.ts';
import type { Balance, Circuit, StatePower } from './types.ts';

/**
 * How even the fed lamps of a state are, and which colours take what others need: lamps of about 2 V hold the cell's terminal
 * so low that lamps of about 3 V stay dark. A lamp is robbed if it lights once the 2 V lamps are taken out.
 */
export function balanceOf(state: StatePower, circuit: Circuit, card: Card): Balance | undefined {
  const lit = card.lamps.filter(({ id }) => state.lamps[id]?.lit);
  const robbers = lit.filter((lamp) => familyOf(lamp) === 'low').map(({ id }) => id);
  const robbed = robbers.length > 0 ? robbedOf(state, circuit, card, robbers) : [];
  const fed = [...new Set([...lit.map(({ id }) => id), ...robbed])];
  if (fed.length < 2) return undefined;
  const current = (id: string) => state.lamps[id]?.mA ?? 0;
  const sorted = [...fed].sort((p, q) => current(q) - current(p));
  const [brightest, dimmest] = [sorted[0] as string, sorted.at(-1) as string];
  return {
    state: state.name,
    brightest,
    dimmest,
    ratio: current(brightest) / Math.max(current(dimmest), 1e-9),
    robbed,
    robbers: robbed.length > 0 ? robbers : [],
  };
}

function robbedOf(state: StatePower, circuit: Circuit, card: Card, robbers: string[]): string[] {
  const weak = card.lamps.filter((lamp) => familyOf(lamp) === 'high' && state.lamps[lamp.id]?.look !== 'lit');
  if (weak.length === 0) return [];
  const out = new Set(robbers);
  const { amps } = solve({ elements: circuit.elements.filter(({ id }) => !out.has(id)) });
  return weak
    .filter(({ id }) => {
      const alone = amps(id) * 1000;
      return lampPower(alone).lit && alone > 2 * (state.lamps[id]?.mA ?? 0);
    })
    .map(({ id }) => id);
}
