import { darkMA, dimMA } from './brightness.ts';
import type { StateCircuit } from './circuitOf.ts';
import { diodeVolt } from './diode.ts';
import type { Joint } from './layCircuit.ts';
import { solverOf, type Solver } from './solve.ts';
import type { JointNeed, LampElement, Solution, StatePower } from './types.ts';

/** A state with the circuit that gave it. */
export interface SolvedState {
  power: StatePower;
  circuit: StateCircuit;
}

/** Beyond this a joint is as good as open, ohm. */
const openOhm = 1e7;
/** Halvings of the seven decades from 1 ohm: the answer is then within 4 %. */
const halvings = 8;

/** What a joint's resistance has to reach before a lamp falls. */
interface Fall {
  ohm: number;
  lamps: string[];
}

/**
 * How much resistance each joint and each lamp's legs bear before a lamp that is lit falls dim, and dark: in the state in
 * which the joint carries most.
 * @returns the joints that matter, the one that bears least first
 */
export function jointNeeds(states: readonly SolvedState[]): JointNeed[] {
  const live = states
    .filter(({ power }) => power.load !== 'shorted' && power.load !== 'none')
    .map((state) => {
      const solver = solverOf(state.circuit);
      return { ...state, solver, solution: solver() };
    });
  const needs = [...busiestFor(live).values()].flatMap(({ id, state }) => needOf(id, state) ?? []);
  return needs.sort((p, q) => p.dimOhm - q.dimOhm);
}

interface Live extends SolvedState {
  solver: Solver;
  solution: Solution;
}

/** The state in which the most current runs through each joint or lamp. */
function busiestFor(states: readonly Live[]): Map<string, { id: string; state: Live; amps: number }> {
  const best = new Map<string, { id: string; state: Live; amps: number }>();
  for (const state of states)
    for (const id of [...state.circuit.joints.map((joint) => joint.id), ...Object.keys(state.power.lamps)]) {
      const amps = Math.abs(state.solution.amps(id));
      if (amps > 1e-7 && amps > (best.get(id)?.amps ?? 0)) best.set(id, { id, state, amps });
    }
  return best;
}

function needOf(id: string, state: Live): JointNeed | undefined {
  const joint = state.circuit.joints.find((candidate) => candidate.id === id);
  const fall = (mA: number) => (joint ? jointFall(joint, state, mA) : legFall(id, state, mA));
  const dark = fall(darkMA);
  const dim = fall(dimMA) ?? dark;
  if (!dim) return undefined;
  return {
    joint: joint ? id : `legs of ${id}`,
    kind: joint?.kind ?? 'lamp-leg',
    ...(joint?.at ? { at: joint.at } : {}),
    state: state.power.name,
    dims: dim.lamps,
    dimOhm: dim.ohm,
    darkens: dark?.lamps ?? [],
    darkOhm: dark?.ohm ?? openOhm,
  };
}

/**
 * Legs carry their own lamp's current only: what the voltage across leaves over at the limit is what they may drop.
 * The rest of the net hardly feels the change, so two rounds settle it.
 */
function legFall(id: string, { circuit, power, solver, solution }: Live, limitMA: number): Fall | undefined {
  const lamp = circuit.elements.find(
    (element): element is LampElement => element.id === id && element.kind === 'lamp',
  );
  if (!lamp || (power.lamps[id]?.mA ?? 0) < limitMA) return undefined;
  const amps = limitMA / 1000;
  const leftFor = ({ volts }: Solution) => {
    const across = volts(lamp.plus) - volts(lamp.minus);
    return Math.max(0, (across - diodeVolt(lamp.diode, amps)) / amps - lamp.seriesOhm);
  };
  let ohm = leftFor(solution);
  for (let round = 0; round < 2; round++) {
    const seriesOhm = lamp.seriesOhm + ohm;
    ohm = leftFor(solver((element) => (element.id === id ? { ...lamp, seriesOhm } : element)));
  }
  return { ohm, lamps: [id] };
}

/** More resistance in a joint never helps the lamps behind it, so the first fall is found by halving, in decades. */
function jointFall(joint: Joint, { power, solver }: Live, limitMA: number): Fall | undefined {
  const lit = Object.keys(power.lamps).filter((id) => (power.lamps[id]?.mA ?? 0) >= limitMA);
  const fallen = (ohm: number): string[] => {
    const { amps } = solver((element) =>
      element.id === joint.id && element.kind === 'resistor' ? { ...element, ohm } : element,
    );
    return lit.filter((id) => amps(id) * 1000 < limitMA);
  };
  if (fallen(openOhm).length === 0) return undefined;
  let [bears, fails] = [0, Math.log10(openOhm)];
  for (let i = 0; i < halvings; i++) {
    const middle = (bears + fails) / 2;
    if (fallen(10 ** middle).length > 0) fails = middle;
    else bears = middle;
  }
  // Lamps alike fall together within the tenth that the search itself is unsure of.
  return { ohm: 10 ** fails, lamps: fallen(1.1 * 10 ** fails) };
}
