import { expect, it } from 'vitest';
import { cellKinds, lampColours, type CardInput } from '../../src/card/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import { sayPower, solveStates } from '../../src/power/index.ts';
import { seeded } from '../../src/power/random.ts';
import { drawnCard } from './drawnCard.ts';

/** A card as wild as its schema allows: lamps anywhere and either way, in rows, on one strip, off the copper, with odd figures. */
function wildCard(seed: number) {
  const random = seeded(seed);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const nets = Array.from({ length: 2 + Math.floor(random() * 5) }, (_, i) => `n${i + 1}`);
  const strips = nets.flatMap((net, i) =>
    Array.from({ length: 1 + Math.floor(random() * 3) }, (_, k) => {
      const path: Point[] = [
        [5 + 30 * k, 10 * i],
        [30 + 30 * k, 10 * i],
      ];
      return { net, widthMm: 0.1 + 8 * random(), path };
    }),
  );
  const place = (): [number, number] => [105 * random(), 148 * random()];
  const lamps = Array.from({ length: Math.floor(random() * 12) }, (_, i) => ({
    id: `L${i}`,
    plus: place(),
    minus: place(),
    colour: pick(lampColours),
    series_ohm: random() < 0.6 ? 0 : 10 ** (6 * random()),
    ...(random() < 0.3 ? { forward: { volt: 0.5 + 5.5 * random(), mA: 100 ** (2 * random() - 1) } } : {}),
  }));
  const contacts = ['C1', 'C2'].map((id) => ({ id, at: place() }));
  const pads = [
    ...lamps.flatMap(({ id }) => [`${id}+`, `${id}-`]),
    'cell+',
    'cell-',
    'C1a',
    'C1b',
    'C2a',
    'C2b',
    'C2c',
  ];
  const padNets = Object.fromEntries(pads.flatMap((pad) => (random() < 0.9 ? [[pad, pick(nets)]] : [])));
  const apart = nets.map((net) => [net]);
  const input = { lamps, contacts, cell: { kind: pick(cellKinds), at: place() } } as Omit<
    CardInput,
    'format' | 'base'
  >;
  const states = [
    { name: 'at rest', closed: [], nodes: apart },
    { name: 'cell pressed', closed: ['cell'], nodes: apart },
    { name: 'all', closed: ['cell', 'C1', 'C2'], nodes: [nets] },
    { name: 'some', closed: ['cell', 'C1'], nodes: [nets.slice(0, 2), ...apart.slice(2)] },
  ];
  return { ...drawnCard(strips, input, states, padNets), charge: random() };
}

it('settles for any card, with finite figures and something to say', () => {
  for (let seed = 1; seed <= 150; seed++) {
    const { card, traced, netlist, charge } = wildCard(seed);
    const report = solveStates(netlist, traced, card, { charge });
    for (const { lamps, cellMA, terminalVolt } of report.states) {
      expect(Number.isFinite(cellMA) && Number.isFinite(terminalVolt), `card ${seed}`).toBe(true);
      for (const { mA } of Object.values(lamps)) expect(Number.isFinite(mA), `card ${seed}`).toBe(true);
      const sum = Object.values(lamps).reduce((most, { mA }) => Math.max(most, mA), 0);
      expect(sum, `card ${seed}: no lamp has more than the cell gives`).toBeLessThanOrEqual(
        cellMA * (1 + 1e-6) + 1e-6,
      );
    }
    const { tells, lesson } = sayPower(report);
    expect([...tells, ...lesson].join(' ')).not.toMatch(/NaN|undefined|Infinity|null/);
  }
});
