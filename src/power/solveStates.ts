import type { Card, LampColour } from '../card/index.ts';
import type { Netlist } from '../net/index.ts';
import type { Traced } from '../trace/index.ts';
import { adviceOn, balances, greediest } from './advice.ts';
import { ageingOf, runTimeOf } from './ageing.ts';
import { cellAt, cellTable } from './cellTable.ts';
import { closeState } from './circuitOf.ts';
import { jointNeeds, type SolvedState } from './jointNeeds.ts';
import { layCircuit } from './layCircuit.ts';
import { spreadOf } from './spread.ts';
import { statesPower } from './statesPower.ts';
import { tapeLesson } from './tapeLesson.ts';
import type { PowerReport, StatePower } from './types.ts';

export interface PowerOptions {
  /** Charge left in the cell, 1 = fresh; the card's own unless given. */
  charge?: number;
  /** 'states': lamps per state only, for every brush stroke. 'full': balance, life, advice, spread, joints too. */
  depth?: 'states' | 'full';
  /** Seed of the spread. */
  seed?: number;
}

/** Draws of the spread, fewer where there are many lamps, so that it stays a matter of a blink. */
const lampDraws = 4000;

/**
 * Will it light, how evenly, and for how long: every state of a netlist solved.
 * @throws FoilproofError that names the part, when a card's figures are impossible
 */
export function solveStates(
  netlist: Netlist,
  traced: Traced,
  card: Card,
  options: PowerOptions = {},
): PowerReport {
  const charge = options.charge ?? card.cell?.charge ?? 1;
  const laid = layCircuit(netlist, traced, card);
  const now = statesPower(laid, card, netlist.states, charge);
  const report: PowerReport = {
    ...cellPart(card, charge),
    colours: coloursOf(card),
    states: now,
    balance: [],
    ageing: [],
    advice: [],
    joints: [],
    tape: tapeLesson(traced, undefined),
  };
  if (options.depth === 'states') return report;
  const withCircuit = (powers: StatePower[], at: number): SolvedState[] =>
    netlist.states.map((state, i) => ({
      power: powers[i] as StatePower,
      circuit: closeState(laid, card, state, at),
    }));
  const solved = withCircuit(now, charge);
  const fresh = charge === 1 ? solved : withCircuit(statesPower(laid, card, netlist.states, 1), 1);
  return { ...report, ...inDepth(solved, fresh, traced, card, options.seed ?? 1) };
}

/** What asks for many solutions; advice and life are told for a fresh cell, whatever the charge now. */
function inDepth(
  now: SolvedState[],
  fresh: SolvedState[],
  traced: Traced,
  card: Card,
  seed: number,
): Omit<PowerReport, 'cell' | 'colours' | 'states'> {
  const busiest = greediest(now);
  const busiestFresh = greediest(fresh);
  const life = busiestFresh && runTimeOf(busiestFresh.power.name, busiestFresh.circuit, card);
  const draws = Math.max(60, Math.min(400, Math.round(lampDraws / Math.max(1, card.lamps.length))));
  return {
    balance: balances(now, card),
    ageing: busiestFresh ? ageingOf(busiestFresh.circuit, card) : [],
    ...(life ? { runTime: life } : {}),
    advice: adviceOn(fresh, balances(fresh, card), card),
    ...(busiest ? { spread: spreadOf(busiest.power.name, busiest.circuit, card, seed, draws) } : {}),
    joints: jointNeeds(now),
    tape: tapeLesson(traced, busiest),
  };
}

function cellPart(card: Card, charge: number): Pick<PowerReport, 'cell'> {
  if (!card.cell) return {};
  const { capacityMAh, continuousMA, pulseMA } = cellTable[card.cell.kind];
  return {
    cell: {
      kind: card.cell.kind,
      charge,
      ...cellAt(card.cell.kind, charge),
      capacityMAh,
      continuousMA,
      pulseMA,
    },
  };
}

function coloursOf(card: Card): PowerReport['colours'] {
  const colours: Partial<Record<LampColour, string[]>> = {};
  for (const { id, colour } of card.lamps) (colours[colour] ??= []).push(id);
  return colours;
}
