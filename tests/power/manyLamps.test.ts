import { expect, it } from 'vitest';
import { solveStates } from '../../src/power/index.ts';
import { railCard } from './drawnCard.ts';

const colours = ['white', 'red', 'blue'] as const;

it('solves 200 lamps in 20 states, each with a finite current', () => {
  const { card, traced, netlist } = railCard(
    Array.from({ length: 200 }, (_, i) => ({ id: `L${i + 1}`, colour: colours[i % 3] ?? 'white' })),
  );
  const [, pressed] = netlist.states;
  if (!pressed) throw new Error('no state');
  const states = Array.from({ length: 20 }, (_, i) => ({ ...pressed, name: `state ${i + 1}` }));
  const { states: solved } = solveStates({ ...netlist, states }, traced, card, { depth: 'states' });
  expect(solved).toHaveLength(20);
  for (const { lamps } of solved) {
    expect(Object.values(lamps)).toHaveLength(200);
    for (const { mA } of Object.values(lamps)) expect(mA).toBeGreaterThanOrEqual(0);
  }
});
