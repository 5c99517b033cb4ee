import type { Traced } from '../trace/index.ts';
import { isTape } from './circuitOf.ts';
import type { SolvedState } from './jointNeeds.ts';
import { solve } from './solve.ts';
import { foilMm, tapeOhm } from './tape.ts';
import type { PowerReport } from './types.ts';

/** All the card's tape as one strip, whole and split lengthwise, and what splitting every strip does to the lamps. */
export function tapeLesson(traced: Traced, busiest: SolvedState | undefined): PowerReport['tape'] {
  const lengthMm = traced.pieces.reduce(
    (sum, { lines }) => sum + lines.reduce((own, line) => own + line.lengthMm, 0),
    0,
  );
  const areaMm2 = traced.pieces.reduce((sum, piece) => sum + piece.areaMm2, 0);
  const widthMm = lengthMm > 0 ? areaMm2 / lengthMm : 0;
  const ohm = widthMm > 0 ? tapeOhm(lengthMm, widthMm) : 0;
  return {
    widthMm,
    lengthMm,
    thicknessMm: foilMm,
    ohm,
    splitOhm: 2 * ohm,
    change: busiest ? splitChange(busiest) : 0,
  };
}

function splitChange({ power, circuit }: SolvedState): number {
  const elements = circuit.elements.map((element) =>
    element.kind === 'resistor' && isTape(element.id) ? { ...element, ohm: 2 * element.ohm } : element,
  );
  const { amps } = solve({ elements });
  const changes = Object.entries(power.lamps)
    .filter(([, lamp]) => lamp.lit)
    .map(([id, lamp]) => Math.abs(amps(id) * 1000 - lamp.mA) / lamp.mA);
  return Math.max(0, ...changes);
}
