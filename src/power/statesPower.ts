import type { Card } from '../card/index.ts';
import type { State } from '../net/index.ts';
import { lampPower } from './brightness.ts';
import { cellAt, cellTable } from './cellTable.ts';
import { closeState } from './circuitOf.ts';
import type { LaidCircuit } from './layCircuit.ts';
import { solve } from './solve.ts';
import type { Circuit, Load, StatePower } from './types.ts';

/** Every lamp in every state. */
export function statesPower(
  laid: LaidCircuit,
  card: Card,
  states: readonly State[],
  charge: number,
): StatePower[] {
  return states.map((state) => statePower(closeState(laid, card, state, charge), card, state, charge));
}

/** Every lamp in one state; lamps that are on no copper are there too, dark. */
export function statePower(
  circuit: Circuit,
  card: Card,
  state: Pick<State, 'name' | 'closed'>,
  charge: number,
): StatePower {
  const { amps, volts, troubles } = solve(circuit);
  const lamps = card.lamps.map(({ id }) => [id, lampPower(milli(amps.get(id)))] as const);
  const cellMA = milli(amps.get('cell'));
  const terminalVolt = (volts.get('face +') ?? 0) - (volts.get('face -') ?? 0);
  return {
    name: state.name,
    closed: state.closed,
    lamps: Object.fromEntries(lamps),
    cellMA,
    terminalVolt,
    load: loadOf(card, cellMA, terminalVolt, charge),
    troubles,
  };
}

/** A terminal at under a third of the cell's voltage feeds no lamp of any colour: that is a short. */
function loadOf(card: Card, cellMA: number, terminalVolt: number, charge: number): Load {
  if (!card.cell || cellMA < 1e-6) return 'none';
  if (terminalVolt < cellAt(card.cell.kind, charge).volt / 3) return 'shorted';
  const { continuousMA, pulseMA } = cellTable[card.cell.kind];
  if (cellMA > pulseMA) return 'over-pulse';
  return cellMA > continuousMA ? 'over-continuous' : 'within';
}

function milli(amps: number | undefined): number {
  const mA = (amps ?? 0) * 1000;
  return Math.abs(mA) < 1e-9 ? 0 : mA;
}
