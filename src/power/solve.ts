import { FoilproofError } from '../words/index.ts';
import { powerWords } from '../words/en/power.ts';
import { checkElements } from './checkElements.ts';
import { diodeBranch } from './diode.ts';
import { planElimination, solveLinear, type EliminationPlan } from './elimination.ts';
import { graphOf, type Graph } from './graph.ts';
import type { Circuit, Element, Solution } from './types.ts';
import { troublesOf } from './troubles.ts';

const mostSteps = 200;

/**
 * The operating point of a circuit of lamps, cells and conductors.
 *
 * Every element's current rises with its voltage, so the node equations are the slope of one convex function (the
 * network's co-content) and have one answer. Newton's step on them is halved until it no longer overshoots along its
 * own direction, which on a convex function leads there from anywhere.
 * @source Millar, Phil. Mag. 42, 1951 (co-content); Boyd and Vandenberghe, Convex Optimization, 2004, chapter 9 (damping)
 * @throws FoilproofError that names an element with an impossible value
 */
export function solve(circuit: Circuit): Solution {
  checkElements(circuit);
  const graph = graphOf(circuit);
  const plan = planElimination(
    graph.nodes,
    graph.open.map(({ a, b }) => [a, b] as const),
    rootsOf(graph),
  );
  const { volts, steps } = findVolts(graph, plan);
  const amps = new Map<string, number>();
  for (const { element, a, b } of graph.open) {
    const { amps: flow } = branch(element, at(volts, a) - at(volts, b));
    // What a cell gives leaves at its plus, so it counts against the voltage.
    amps.set(element.id, element.kind === 'cell' ? -flow : flow);
  }
  for (const element of graph.closed)
    amps.set(element.id, element.kind === 'cell' ? element.volt / element.ohm : 0);
  return {
    volts: new Map([...graph.nodeOf].map(([name, node]) => [name, at(volts, node)])),
    amps,
    steps,
    troubles: troublesOf(graph),
  };
}

/** 0 V is the minus of the first cell of a connected part, or any node where there is none. */
function rootsOf(graph: Graph): Set<number> {
  const root = new Map<number, number>();
  for (const { element, b } of graph.open) {
    const part = graph.partOf[b] as number;
    if (element.kind === 'cell' && !root.has(part)) root.set(part, b);
  }
  for (let node = 0; node < graph.nodes; node++) {
    const part = graph.partOf[node] as number;
    if (!root.has(part)) root.set(part, node);
  }
  return new Set(root.values());
}

function findVolts(graph: Graph, plan: EliminationPlan): { volts: Float64Array; steps: number } {
  let volts: Float64Array = new Float64Array(graph.nodes);
  let state = linearise(graph, volts);
  let last = Infinity;
  for (let step = 1; step <= mostSteps; step++) {
    const change = solveLinear(plan, state.siemens, state.inflow);
    const most = largest(change);
    const moved = damp(graph, volts, change, most);
    volts = moved.volts;
    state = moved.state;
    // Newton's steps shrink quadratically; where they stop doing so, rounding has been reached.
    if (most < 1e-14 || (most < 1e-8 && moved.share === 1 && most > last / 2)) return { volts, steps: step };
    last = most;
  }
  throw new FoilproofError(powerWords.noConvergence(mostSteps, worstElement(graph, state)));
}

interface Linearised {
  /** Slope of each open element, S. */
  siemens: Float64Array;
  /** Current still unbalanced into each node, A. */
  inflow: Float64Array;
}

function linearise(graph: Graph, volts: Float64Array): Linearised {
  const siemens = new Float64Array(graph.open.length);
  const inflow = new Float64Array(graph.nodes);
  graph.open.forEach(({ element, a, b }, i) => {
    const { amps, siemens: slope } = branch(element, at(volts, a) - at(volts, b));
    siemens[i] = slope;
    inflow[a] = at(inflow, a) - amps;
    inflow[b] = at(inflow, b) + amps;
  });
  return { siemens, inflow };
}

/** Current from a to b and its slope at the voltage of a over b. */
function branch(element: Element, volt: number): { amps: number; siemens: number } {
  switch (element.kind) {
    case 'resistor':
      return { amps: volt / element.ohm, siemens: 1 / element.ohm };
    case 'cell':
      return { amps: (volt - element.volt) / element.ohm, siemens: 1 / element.ohm };
    case 'lamp':
      return diodeBranch(element.diode, element.seriesOhm, volt);
  }
}

function damp(graph: Graph, volts: Float64Array, change: Float64Array, most: number) {
  const downhill = dot(linearise(graph, volts).inflow, change);
  let share = 1;
  for (;;) {
    const next = volts.map((volt, i) => volt + share * at(change, i));
    const state = linearise(graph, next);
    // The slope along the step goes from -downhill towards 0; past 0 the step has overshot the valley.
    const overshoot = -dot(state.inflow, change);
    if (most < 1e-6 || overshoot <= 0.1 * downhill || share < 1e-9) return { volts: next, state, share };
    share /= 2;
  }
}

function worstElement(graph: Graph, { inflow }: Linearised): string {
  const worst = graph.open.reduce(
    (best, { element, a, b }) => {
      const miss = Math.max(Math.abs(at(inflow, a)), Math.abs(at(inflow, b)));
      return miss > best.miss ? { id: element.id, miss } : best;
    },
    { id: '', miss: -1 },
  );
  return worst.id;
}

function dot(a: Float64Array, b: Float64Array): number {
  return a.reduce((sum, value, i) => sum + value * at(b, i), 0);
}

function largest(values: Float64Array): number {
  return values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
}

function at(values: Float64Array, i: number): number {
  return values[i] as number;
}
