import { powerWords } from '../words/power.ts';
import { FoilproofError } from '../words/index.ts';
import { checkElements } from './checkElements.ts';
import { compile, linearise, type Compiled, type Linearised } from './compile.ts';
import { planElimination, solveLinear, type EliminationPlan } from './elimination.ts';
import { graphOf, type Graph } from './graph.ts';
import { troublesOf } from './troubles.ts';
import type { Circuit, Element, Solution } from './types.ts';

const mostSteps = 200;

/** Solves a circuit of fixed wiring again and again with other values. @param change gives an element's new values, same ends */
export type Solver = (change?: (element: Element) => Element) => Solution;

/**
 * The operating point of a circuit of lamps, cells and conductors.
 * @throws FoilproofError that names an element with an impossible value
 */
export function solve(circuit: Circuit): Solution {
  return solverOf(circuit)();
}

/**
 * Orders a circuit's equations once, for any number of solutions.
 *
 * Every element's current rises with its voltage, so the node equations are the slope of one convex function (the
 * network's co-content) and have one answer. Newton's step on them is halved until it no longer overshoots along its
 * own direction, which on a convex function leads there from anywhere.
 * @source Millar, Phil. Mag. 42, 1951 (co-content); Boyd and Vandenberghe, Convex Optimization, 2004, chapter 9 (damping)
 */
export function solverOf(circuit: Circuit): Solver {
  checkElements(circuit);
  const graph = graphOf(circuit);
  const edges = graph.open.map(({ a, b }) => [a, b] as const);
  const plan = planElimination(graph.nodes, edges, rootsOf(graph));
  const index = new Map(graph.open.map(({ element }, i) => [element.id, i]));
  let near = new Float64Array(graph.nodes);
  return (change) => {
    const now = graph.open.map(({ element }) => (change ? change(element) : element));
    if (change) checkElements({ elements: now });
    const { volts, amps, steps } = findVolts(compile(graph, now), plan, graph, near);
    near = volts;
    const closed = graph.closed.map((element) => (change ? change(element) : element));
    return {
      volts: (node) => volts[graph.nodeOf.get(node) ?? -1] ?? 0,
      amps: (id) => {
        const i = index.get(id);
        if (i === undefined) return acrossNothing(closed.find((element) => element.id === id));
        // What a cell gives leaves at its plus, so it counts against the voltage.
        return (now[i]?.kind === 'cell' ? -1 : 1) * (amps[i] as number);
      },
      steps,
      troubles: troublesOf(graph, now),
    };
  };
}

/** An element with both ends on one node: only a cell drives a current there. */
function acrossNothing(element: Element | undefined): number {
  return element?.kind === 'cell' ? element.volt / element.ohm : 0;
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

interface Found {
  volts: Float64Array<ArrayBuffer>;
  amps: Float64Array;
  steps: number;
}

function findVolts(
  net: Compiled,
  plan: EliminationPlan,
  graph: Graph,
  start: Float64Array<ArrayBuffer>,
): Found {
  let volts = start;
  let state = linearise(net, volts);
  let last = Infinity;
  for (let steps = 1; steps <= mostSteps; steps++) {
    const change = solveLinear(plan, state.siemens, state.inflow);
    const most = largest(change);
    const moved = damp(net, volts, state, change, most);
    ({ volts, state } = moved);
    // Newton's steps shrink quadratically; where they stop doing so, rounding has been reached.
    const rounded = most < 1e-8 && moved.share === 1 && most > last / 2;
    if (most < 1e-14 || rounded) return { volts, amps: state.amps, steps };
    last = most;
  }
  throw new FoilproofError(powerWords.noConvergence(mostSteps, worstElement(graph, state)));
}

function damp(
  net: Compiled,
  volts: Float64Array<ArrayBuffer>,
  { inflow }: Linearised,
  change: Float64Array,
  most: number,
): { volts: Float64Array<ArrayBuffer>; state: Linearised; share: number } {
  const downhill = dot(inflow, change);
  let share = 1;
  for (;;) {
    const next = stepBy(volts, change, share);
    const state = linearise(net, next);
    // The slope along the step goes from -downhill towards 0; past 0 the step has overshot the valley.
    const overshoot = -dot(state.inflow, change);
    if (most < 1e-6 || overshoot <= 0.1 * downhill || share < 1e-9) return { volts: next, state, share };
    share /= 2;
  }
}

function stepBy(volts: Float64Array, change: Float64Array, share: number): Float64Array<ArrayBuffer> {
  const next = new Float64Array(volts.length);
  for (let i = 0; i < next.length; i++) next[i] = (volts[i] as number) + share * (change[i] as number);
  return next;
}

function worstElement(graph: Graph, { inflow }: Linearised): string {
  const miss = (node: number) => Math.abs(inflow[node] as number);
  const worst = [...graph.open].sort(
    (p, q) => Math.max(miss(q.a), miss(q.b)) - Math.max(miss(p.a), miss(p.b)),
  );
  return worst[0]?.element.id ?? '';
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] as number) * (b[i] as number);
  return sum;
}

function largest(values: Float64Array): number {
  let most = 0;
  for (const value of values) most = Math.max(most, Math.abs(value));
  return most;
}
