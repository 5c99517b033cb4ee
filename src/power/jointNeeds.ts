import { darkMA, dimMA } from './brightness.ts';
import type { StateCircuit } from './circuitOf.ts';
import { solve } from './solve.ts';
import type { JointKind, JointNeed, StatePower } from './types.ts';

/** A state with the circuit that gave it. */
export interface SolvedState {
  power: StatePower;
  circuit: StateCircuit;
}

/** Beyond this a joint is as good as open, ohm. */
const openOhm = 1e7;
/** Halvings of the seven decades from 1 ohm: the answer is then within 2 %. */
const halvings = 9;

interface Probe {
  joint: string;
  kind: JointKind;
  at?: readonly [number, number];
  element: string;
}

/**
 * How much resistance each joint bears before a lamp that is lit falls dim, and dark: in the state in which it carries most.
 * @returns the joints that matter, the one that bears least first
 */
export function jointNeeds(states: readonly SolvedState[]): JointNeed[] {
  const needs = [...probesOf(states).values()].flatMap(({ probe, state }) => {
    const need = needOf(probe, state);
    return need ? [need] : [];
  });
  return needs.sort((p, q) => p.dimOhm - q.dimOhm);
}

/** Each joint with the state in which the most current runs through it. */
function probesOf(states: readonly SolvedState[]): Map<string, { probe: Probe; state: SolvedState }> {
  const best = new Map<string, { probe: Probe; state: SolvedState; amps: number }>();
  for (const state of states) {
    if (state.power.load === 'shorted' || state.power.load === 'none') continue;
    const { amps } = solve(state.circuit);
    for (const probe of probesIn(state.circuit)) {
      const flow = Math.abs(amps.get(probe.element) ?? 0);
      if (flow > 1e-7 && flow > (best.get(probe.joint)?.amps ?? 0))
        best.set(probe.joint, { probe, state, amps: flow });
    }
  }
  return best;
}

function probesIn({ joints, elements }: StateCircuit): Probe[] {
  const lamps = elements.filter(({ kind }) => kind === 'lamp');
  return [
    ...joints.map(({ id, kind, at }) => ({ joint: id, kind, element: id, ...(at ? { at } : {}) })),
    ...lamps.map(({ id }) => ({ joint: `legs of ${id}`, kind: 'lamp-leg' as const, element: id })),
  ];
}

function needOf(probe: Probe, { power, circuit }: SolvedState): JointNeed | undefined {
  const fallen = (ohm: number, limit: number): string[] => {
    const lit = Object.entries(power.lamps).filter(([, lamp]) => lamp.mA >= limit);
    const { amps } = solve(withOhm(circuit, probe.element, ohm));
    return lit.filter(([id]) => (amps.get(id) ?? 0) * 1000 < limit).map(([id]) => id);
  };
  const dim = firstFall((ohm) => fallen(ohm, dimMA));
  const dark = firstFall((ohm) => fallen(ohm, darkMA));
  if (!dim && !dark) return undefined;
  return {
    joint: probe.joint,
    kind: probe.kind,
    ...(probe.at ? { at: probe.at } : {}),
    state: power.name,
    dims: dim?.lamps ?? dark?.lamps ?? [],
    dimOhm: dim?.ohm ?? dark?.ohm ?? openOhm,
    darkens: dark?.lamps ?? [],
    darkOhm: dark?.ohm ?? openOhm,
  };
}

/** More resistance never helps the lamps behind it, so the first fall is found by halving, in decades. */
function firstFall(fallen: (ohm: number) => string[]): { ohm: number; lamps: string[] } | undefined {
  let lamps = fallen(openOhm);
  if (lamps.length === 0) return undefined;
  let [bears, fails] = [0, Math.log10(openOhm)];
  for (let i = 0; i < halvings; i++) {
    const middle = (bears + fails) / 2;
    const now = fallen(10 ** middle);
    if (now.length > 0) [fails, lamps] = [middle, now];
    else bears = middle;
  }
  return { ohm: 10 ** fails, lamps };
}

function withOhm(circuit: StateCircuit, id: string, ohm: number): StateCircuit {
  const elements = circuit.elements.map((element) => {
    if (element.id !== id || element.kind === 'cell') return element;
    return element.kind === 'lamp' ? { ...element, seriesOhm: element.seriesOhm + ohm } : { ...element, ohm };
  });
  return { ...circuit, elements };
}
