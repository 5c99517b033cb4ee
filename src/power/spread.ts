import type { Card, Lamp } from '../card/index.ts';
import { darkMA } from './brightness.ts';
import { jointRanges } from './joints.ts';
import { lampTable, shiftDiode } from './lampTable.ts';
import type { StateCircuit } from './circuitOf.ts';
import { normal, seeded } from './random.ts';
import { solverOf } from './solve.ts';
import type { Element, JointKind, Spread } from './types.ts';

/** Forward voltages of one bag of lamps differ by some 0.05 V (one standard deviation): from memory, no source. */
const forwardSpreadVolt = 0.05;
/** Usual craft resistors. @source IEC 60062, gold band */
const resistorTolerance = 0.05;

/**
 * What luck with parts and joints does to each lamp of a state: many draws of the same card.
 * Joints are drawn evenly on a logarithmic scale over their range, forward voltages normally within the colour's limits.
 */
export function spreadOf(
  state: string,
  circuit: StateCircuit,
  card: Card,
  seed: number,
  draws: number,
): Spread {
  const random = seeded(seed);
  const kinds = new Map(circuit.joints.map(({ id, kind }) => [id, kind]));
  const lamps = new Map(card.lamps.map((lamp) => [lamp.id, lamp]));
  const solver = solverOf(circuit);
  const taken: Record<string, number[]> = Object.fromEntries(card.lamps.map(({ id }) => [id, []]));
  for (let i = 0; i < draws; i++) {
    const { amps } = solver((element) => drawElement(element, kinds, lamps, random));
    for (const { id } of card.lamps) taken[id]?.push(amps(id) * 1000);
  }
  const bands = Object.entries(taken).map(([id, values]) => [id, percentiles(values)] as const);
  return { state, seed, draws, lamps: Object.fromEntries(bands) };
}

function drawElement(
  element: Element,
  kinds: ReadonlyMap<string, JointKind>,
  lamps: ReadonlyMap<string, Lamp>,
  random: () => number,
): Element {
  if (element.kind === 'resistor') {
    const kind = kinds.get(element.id);
    return kind ? { ...element, ohm: drawJoint(kind, random) } : element;
  }
  if (element.kind === 'cell') return element;
  const lamp = lamps.get(element.id);
  if (!lamp) return element;
  const [least, typical, most] = lampTable[lamp.colour].at5mA;
  const shift = Math.min(most - typical, Math.max(least - typical, forwardSpreadVolt * normal(random)));
  const resistor = lamp.series_ohm * (1 + resistorTolerance * (2 * random() - 1));
  const legs = drawJoint('lamp-leg', random) + drawJoint('lamp-leg', random);
  return { ...element, diode: shiftDiode(element.diode, shift), seriesOhm: resistor + legs };
}

function drawJoint(kind: JointKind, random: () => number): number {
  const { least, most } = jointRanges[kind];
  return least * (most / least) ** random();
}

function percentiles(values: number[]) {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] ?? 0;
  const darkShare = sorted.filter((mA) => mA < darkMA).length / sorted.length;
  return { low: at(0.05), middle: at(0.5), high: at(0.95), darkShare };
}
