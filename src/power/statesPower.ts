import type { Card } from '../card/index.ts';
import type { State } from '../net/index.ts';
import { lampPower } from './brightness.ts';
import { cellAt, cellTable } from './cellTable.ts';
import { closeState, isTape } from './circuitOf.ts';
import type { LaidCircuit } from './layCircuit.ts';
import { solve, solverOf } from './solve.ts';
import { openOhm } from './troubles.ts';
import type { Circuit, Load, Solution, StatePower } from './types.ts';

/** Every lamp in every state: one circuit with every contact in it, of which each state opens some. */
export function statesPower(
  laid: LaidCircuit,
  card: Card,
  states: readonly State[],
  charge: number,
): StatePower[] {
  const circuits = states.map((state) => closeState(laid, card, state, charge));
  const elements = new Map(circuits.flatMap((one) => one.elements.map((element) => [element.id, element])));
  const solver = solverOf({ elements: [...elements.values()] });
  return states.map((state, i) => {
    const closed = new Set(circuits[i]?.joints.map(({ id }) => id));
    const solution = solver((element) => {
      const open = element.kind === 'resistor' && !isTape(element.id) && !closed.has(element.id);
      return open ? { ...element, ohm: openOhm } : element;
    });
    return stateOf(solution, card, state, charge);
  });
}

/** Every lamp of one circuit. */
export function statePower(
  circuit: Circuit,
  card: Card,
  state: Pick<State, 'name' | 'closed'>,
  charge: number,
): StatePower {
  return stateOf(solve(circuit), card, state, charge);
}

/** Lamps that are on no copper are there too, dark. */
function stateOf(
  { amps, volts, troubles }: Solution,
  card: Card,
  { name, closed }: Pick<State, 'name' | 'closed'>,
  charge: number,
): StatePower {
  const lamps = card.lamps.map(({ id }) => [id, lampPower(milli(amps(id)))] as const);
  const cellMA = milli(amps('cell'));
  const terminalVolt = volts('face +') - volts('face -');
  const load = loadOf(card, cellMA, terminalVolt, charge);
  return { name, closed, lamps: Object.fromEntries(lamps), cellMA, terminalVolt, load, troubles };
}

/** A terminal at under a third of the cell's voltage feeds no lamp of any colour: that is a short. */
function loadOf(card: Card, cellMA: number, terminalVolt: number, charge: number): Load {
  if (!card.cell || cellMA < 1e-6) return 'none';
  if (terminalVolt < cellAt(card.cell.kind, charge).volt / 3) return 'shorted';
  const { continuousMA, pulseMA } = cellTable[card.cell.kind];
  if (cellMA > pulseMA) return 'over-pulse';
  return cellMA > continuousMA ? 'over-continuous' : 'within';
}

function milli(amps: number): number {
  const mA = amps * 1000;
  return Math.abs(mA) < 1e-8 ? 0 : mA;
}
