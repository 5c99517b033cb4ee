import { describe, expect, it } from 'vitest';
import { lampColours } from '../../src/card/index.ts';
import { colourDiode } from '../../src/power/lampTable.ts';
import { seeded } from '../../src/power/random.ts';
import { solve } from '../../src/power/solve.ts';
import type { Circuit, Element } from '../../src/power/types.ts';

/** A random net: nodes joined by a random tree and some loops of resistors, lamps anywhere and either way round, one or two cells. */
function randomCircuit(seed: number): Circuit {
  const random = seeded(seed);
  const nodes = 2 + Math.floor(random() * 30);
  const node = () => `n${Math.floor(random() * nodes)}`;
  const logarithmic = (low: number, high: number) => low * (high / low) ** random();
  const elements: Element[] = [];
  for (let i = 1; i < nodes; i++) {
    if (random() < 0.15) continue;
    const a = `n${Math.floor(random() * i)}`;
    elements.push({ kind: 'resistor', id: `R${i}`, a, b: `n${i}`, ohm: logarithmic(1e-3, 1e5) });
  }
  for (let i = 0; i < random() * 10; i++)
    elements.push({ kind: 'resistor', id: `X${i}`, a: node(), b: node(), ohm: logarithmic(1e-3, 1e7) });
  for (let i = 0; i < random() * 25; i++) {
    const colour = lampColours[Math.floor(random() * lampColours.length)] ?? 'red';
    const seriesOhm = random() < 0.5 ? 0 : logarithmic(1, 1000);
    elements.push({
      kind: 'lamp',
      id: `L${i}`,
      plus: node(),
      minus: node(),
      diode: colourDiode(colour),
      seriesOhm,
    });
  }
  for (let i = 0; i < 1 + Math.floor(random() * 2); i++)
    elements.push({
      kind: 'cell',
      id: `cell${i}`,
      plus: node(),
      minus: node(),
      volt: 1 + 2.3 * random(),
      ohm: logarithmic(1, 200),
    });
  return { elements };
}

/** What the cells give less what everything takes (their own resistance too), over what is turned over in all. */
function energyMiss({ elements }: Circuit): number {
  const { volts, amps } = solve({ elements });
  const across = (a: string, b: string) => volts(a) - volts(b);
  let [miss, turned] = [0, 0];
  for (const element of elements) {
    const flow = amps(element.id);
    if (element.kind === 'cell') {
      miss += element.volt * flow - flow ** 2 * element.ohm;
      turned += Math.abs(element.volt * flow);
    } else if (element.kind === 'lamp') miss -= across(element.plus, element.minus) * flow;
    else miss -= across(element.a, element.b) * flow;
  }
  // Under a microwatt the rounding of a cell's voltage alone (4e-16 of 3 V over 1 ohm) is more than 1e-9 of it.
  return miss / Math.max(turned, 1e-6);
}

describe('any net', () => {
  it('settles, and gives as much power as it takes, on 2000 random nets', () => {
    for (let seed = 1; seed <= 2000; seed++) {
      const miss = energyMiss(randomCircuit(seed));
      expect(Math.abs(miss), `net ${seed}`).toBeLessThan(1e-9);
    }
  });

  it('does not mind the order of its elements or the names of its nodes', () => {
    for (let seed = 1; seed <= 200; seed++) {
      const circuit = randomCircuit(seed);
      const renamed = [...circuit.elements].reverse().map((element): Element => {
        if (element.kind === 'resistor') return { ...element, a: `x${element.b}`, b: `x${element.a}` };
        return { ...element, plus: `x${element.plus}`, minus: `x${element.minus}` };
      });
      const [one, other] = [solve(circuit), solve({ elements: renamed })];
      for (const { id, kind } of circuit.elements) {
        if (kind === 'resistor') continue;
        const [p, q] = [one.amps(id), other.amps(id)];
        expect(Math.abs(p - q)).toBeLessThan(1e-11 + 1e-8 * Math.abs(p));
      }
    }
  });

  it('lights no lamp brighter when any conductor gets worse and no other path feeds it', () => {
    // A chain has one path: more resistance anywhere means less current everywhere behind it.
    const random = seeded(7);
    for (let i = 0; i < 200; i++) {
      const ohms = Array.from({ length: 4 }, () => 0.01 * 1e4 ** random());
      const at = Math.floor(random() * 4);
      const worse = ohms.map((ohm, k) => (k === at ? ohm * (1 + random()) : ohm));
      expect(chain(worse)).toBeLessThan(chain(ohms));
    }
  });

  it('gives equal lamps in equal places equal currents', () => {
    const lamps = Array.from({ length: 8 }, (_, i): Element[] => [
      { kind: 'resistor', id: `r${i}`, a: 'p', b: `a${i}`, ohm: 0.3 },
      { kind: 'lamp', id: `L${i}`, plus: `a${i}`, minus: 'n', diode: colourDiode('white'), seriesOhm: 10 },
    ]).flat();
    const { amps } = solve({
      elements: [{ kind: 'cell', id: 'cell', plus: 'p', minus: 'n', volt: 3, ohm: 15 }, ...lamps],
    });
    for (let i = 1; i < 8; i++) expect(amps(`L${i}`) / amps('L0')).toBeCloseTo(1, 12);
  });
});

function chain(ohms: number[]): number {
  const elements: Element[] = [
    { kind: 'cell', id: 'cell', plus: '0', minus: 'end', volt: 3, ohm: 15 },
    ...ohms.map((ohm, i): Element => ({ kind: 'resistor', id: `r${i}`, a: `${i}`, b: `${i + 1}`, ohm })),
    { kind: 'lamp', id: 'L', plus: `${ohms.length}`, minus: 'end', diode: colourDiode('red'), seriesOhm: 0 },
  ];
  return solve({ elements }).amps('L');
}
