import { Matrix, solve } from 'ml-matrix';
import type { Diode, Element } from '../../src/power/types.ts';

/** One part of a circuit written by hand; node 0 is the reference. Ohm, volt. */
export type Part =
  | { id: string; from: number; to: number; ohm: number }
  | { id: string; from: number; to: number; ohm: number; volt: number }
  | { id: string; from: number; to: number; ohm: number; diode: Diode };

/**
 * Currents of a circuit by nodal analysis, lamps by Shockley's equation, Newton's steps held to 50 mV a junction.
 * Written for the tests alone: full matrices solved by ml-matrix, every series resistance between nodes of its own.
 * @source Ho, Ruehli and Brennan, "The modified nodal approach", IEEE Trans. CAS-22 (1975)
 * @returns amperes by the id of each part, from `from` to `to`
 */
export function currentsOf(parts: readonly Part[]): Record<string, number> {
  const count = 1 + Math.max(...parts.flatMap(({ from, to }) => [from, to]));
  const junction = new Map(
    parts.filter((part) => 'diode' in part).map(({ id }, k) => [id, count + k] as const),
  );
  const size = count + junction.size;
  const volts = new Array<number>(size).fill(0);
  const lampVolts = new Map([...junction.keys()].map((id) => [id, 0]));
  const ohmOf = (part: Part) => part.ohm + ('diode' in part ? part.diode.ohm : 0);
  for (let step = 0; step < 2000; step++) {
    const g = Matrix.zeros(size, size);
    const i = Matrix.zeros(size, 1);
    const conduct = (a: number, b: number, siemens: number, amps: number) => {
      for (const [p, q, sign] of [
        [a, a, 1],
        [b, b, 1],
        [a, b, -1],
        [b, a, -1],
      ] as const)
        g.set(p, q, g.get(p, q) + sign * siemens);
      i.set(a, 0, i.get(a, 0) - amps);
      i.set(b, 0, i.get(b, 0) + amps);
    };
    for (const part of parts) {
      const inner = junction.get(part.id);
      conduct(part.from, inner ?? part.to, 1 / ohmOf(part), 'volt' in part ? part.volt / ohmOf(part) : 0);
      if (inner === undefined || !('diode' in part)) continue;
      const { saturationA, slopeV } = part.diode;
      const v = lampVolts.get(part.id)!;
      const siemens = (saturationA / slopeV) * Math.exp(v / slopeV) + 1e-15;
      conduct(inner, part.to, siemens, saturationA * Math.expm1(v / slopeV) - siemens * v);
    }
    for (let k = 0; k < size; k++) g.set(0, k, k === 0 ? 1 : 0);
    i.set(0, 0, 0);
    const next = solve(g, i).to1DArray();
    let most = 0;
    for (const part of parts) {
      const inner = junction.get(part.id);
      if (inner === undefined) continue;
      const [wanted, now] = [next[inner] - next[part.to], lampVolts.get(part.id)!];
      const move = Math.max(-0.5, Math.min(0.05, wanted - now));
      most = Math.max(most, Math.abs(move));
      lampVolts.set(part.id, now + move);
    }
    volts.splice(0, size, ...next);
    if (most < 1e-12) break;
  }
  return Object.fromEntries(
    parts.map((part) => {
      const across = volts[part.from] - volts[junction.get(part.id) ?? part.to];
      return [part.id, (across + ('volt' in part ? part.volt : 0)) / ohmOf(part)];
    }),
  );
}

/** Elements by node names as parts by numbers, the cell's lower face first; what ends blind carries nothing and is left out. */
export function partsOf(elements: readonly Element[]): Part[] {
  const numbers = new Map<string, number>();
  const cell = elements.find((each) => each.kind === 'cell');
  const number = (node: string) => {
    if (!numbers.has(node)) numbers.set(node, numbers.size);
    return numbers.get(node)!;
  };
  if (cell) number(cell.minus);
  const parts = withoutBlindEnds(elements.filter((each) => each.kind !== 'resistor' || each.a !== each.b));
  return parts.map((each): Part => {
    if (each.kind === 'resistor')
      return { id: each.id, from: number(each.a), to: number(each.b), ohm: Math.max(each.ohm, 1e-6) };
    const { id, plus, minus } = each;
    if (each.kind === 'cell')
      return { id, from: number(minus), to: number(plus), ohm: each.ohm, volt: each.volt };
    return { id, from: number(plus), to: number(minus), ohm: each.seriesOhm, diode: each.diode };
  });
}

function withoutBlindEnds(elements: readonly Element[]): Element[] {
  const ends = (each: Element) => (each.kind === 'resistor' ? [each.a, each.b] : [each.plus, each.minus]);
  const met = new Map<string, number>();
  for (const node of elements.flatMap(ends)) met.set(node, (met.get(node) ?? 0) + 1);
  const kept = elements.filter((each) => ends(each).every((node) => met.get(node)! > 1));
  return kept.length === elements.length ? kept : withoutBlindEnds(kept);
}
