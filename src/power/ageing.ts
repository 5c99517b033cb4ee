import type { Card } from '../card/index.ts';
import { darkMA, dimMA } from './brightness.ts';
import { cellAt, cellTable } from './cellTable.ts';
import { solverOf, type Solver } from './solve.ts';
import type { AgeStep, Circuit, RunTime } from './types.ts';

const shown = [1, 0.75, 0.5, 0.3, 0.2, 0.1, 0.05, 0];
const pressSeconds = 5;

/** A state's lamps as the cell is used up. */
export function ageingOf(circuit: Circuit, card: Card): AgeStep[] {
  const solver = solverOf(circuit);
  return shown.map((charge) => stepAt(solver, card, charge));
}

/**
 * How long a fresh cell keeps a state's lamps lit, held without a pause: the charge left over the current it feeds, summed as
 * the cell is used up. An estimate: rests let a cell recover, hard loads lose capacity.
 * @returns undefined when nothing is lit
 */
export function runTimeOf(state: string, circuit: Circuit, card: Card): RunTime | undefined {
  if (!card.cell) return undefined;
  const { capacityMAh } = cellTable[card.cell.kind];
  const parts = 20;
  const solver = solverOf(circuit);
  const steps = Array.from({ length: parts + 1 }, (_, i) => stepAt(solver, card, 1 - i / parts));
  const lit = Object.entries(steps[0]?.lamps ?? {}).filter(([, mA]) => mA >= darkMA);
  if (lit.length === 0) return undefined;
  const dimmest = steps.map(({ lamps }) => Math.min(...lit.map(([id]) => lamps[id] ?? 0)));
  const perStep = capacityMAh / parts;
  let [hoursBright, hoursLit] = [0, 0];
  for (let i = 0; i < parts; i++) {
    const [from, to] = [steps[i] as Step, steps[i + 1] as Step];
    const hours = perStep / ((from.cellMA + to.cellMA) / 2);
    hoursBright += hours * shareAbove(dimmest[i] as number, dimmest[i + 1] as number, dimMA);
    hoursLit += hours * shareAbove(dimmest[i] as number, dimmest[i + 1] as number, darkMA);
  }
  return { state, hoursBright, hoursLit, presses: Math.floor((hoursLit * 3600) / pressSeconds) };
}

interface Step extends AgeStep {
  cellMA: number;
}

function stepAt(solver: Solver, card: Card, charge: number): Step {
  const { volt, ohm } = card.cell ? cellAt(card.cell.kind, charge) : { volt: 0, ohm: 1 };
  const { amps } = solver((element) => (element.kind === 'cell' ? { ...element, volt, ohm } : element));
  const lamps = card.lamps.map(({ id }) => [id, amps(id) * 1000] as const);
  return { charge, volt, ohm, lamps: Object.fromEntries(lamps), cellMA: amps('cell') * 1000 };
}

/** Share of a step in which a value that goes evenly from `from` to `to` is above a limit. */
function shareAbove(from: number, to: number, limit: number): number {
  if (from >= limit && to >= limit) return 1;
  if (from < limit && to < limit) return 0;
  const share = (from - limit) / (from - to);
  return from >= limit ? share : 1 - share;
}
