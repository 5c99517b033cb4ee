import { expect, it } from 'vitest';
import type { Point } from '../../src/geometry/index.ts';
import type { Netlist } from '../../src/net/index.ts';
import { circuitOf, solve, solveStates } from '../../src/power/index.ts';
import { drawnCard } from './drawnCard.ts';

/** Three lamps on one plus strip; a stroke joins their own minus strips to the wave strip, one after another. */
const stroked = drawnCard(
  [
    {
      net: 'plus',
      widthMm: 5,
      path: [
        [5, 20],
        [90, 20],
      ],
    },
    {
      net: 'wave',
      widthMm: 5,
      path: [
        [5, 80],
        [90, 80],
      ],
    },
    ...[20, 40, 60].map((x, i) => ({
      net: `beam${i}`,
      widthMm: 3,
      path: [
        [x, 30],
        [x, 76],
      ] as [number, number][],
    })),
  ],
  {
    cell: { at: [8, 80], upper_contact: [5, 20] },
    lamps: [20, 40, 60].map((x, i) => ({
      id: `L${i}`,
      plus: [x, 20],
      minus: [x, 30],
      colour: i === 1 ? 'red' : 'white',
    })),
    contacts: [20, 40, 60].map((x, i) => ({ id: `C${i}`, how: 'stroke', order: i + 1, at: [x, 78] })),
  },
  [
    { name: 'at rest', closed: [], nodes: [['plus'], ['wave'], ['beam0'], ['beam1'], ['beam2']] },
    { name: 'cell pressed', closed: ['cell'], nodes: [['plus'], ['wave'], ['beam0'], ['beam1'], ['beam2']] },
    { name: 'stroke 1', closed: ['cell', 'C0'], nodes: [['plus'], ['wave', 'beam0'], ['beam1'], ['beam2']] },
    { name: 'stroke 2', closed: ['cell', 'C1'], nodes: [['plus'], ['wave', 'beam1'], ['beam0'], ['beam2']] },
    {
      name: 'all',
      closed: ['cell', 'C0', 'C1', 'C2'],
      nodes: [['plus'], ['wave', 'beam0', 'beam1', 'beam2']],
    },
  ],
  {
    'cell+': 'plus',
    'cell-': 'wave',
    ...Object.fromEntries(
      [0, 1, 2].flatMap((i) => [
        [`L${i}+`, 'plus'],
        [`L${i}-`, `beam${i}`],
        [`C${i}a`, 'wave'],
        [`C${i}b`, `beam${i}`],
      ]),
    ),
  },
);

it('lights in each state what its contacts close, and all states at once agree with each alone', () => {
  const { card, traced, netlist } = stroked;
  const { states } = solveStates(netlist, traced, card, { depth: 'states' });
  const lit = states.map(({ lamps }) => Object.keys(lamps).filter((id) => lamps[id]?.lit));
  expect(lit).toEqual([[], [], ['L0'], ['L1'], ['L1']]);
  netlist.states.forEach((state, i) => {
    const { amps } = solve(circuitOf(netlist, traced, card, state));
    for (const { id } of card.lamps) expect(states[i]?.lamps[id]?.mA).toBeCloseTo(amps(id) * 1000, 7);
  });
});

it('finds that the red lamp robs the white ones when all contacts are closed', () => {
  const { card, traced, netlist } = stroked;
  const { balance } = solveStates(netlist, traced, card);
  expect(balance.find(({ state }) => state === 'all')).toMatchObject({
    robbers: ['L1'],
    robbed: ['L0', 'L2'],
  });
});

it('lets nothing flow beneath a lamp or across a seen break, though the mask runs on there', () => {
  const path: Point[] = [
    [10, 20],
    [90, 20],
  ];
  const { card, traced, netlist } = drawnCard(
    [{ net: 'plus', widthMm: 5, path }],
    {
      lamps: [{ id: 'L1', plus: [38, 20], minus: [44, 20] }],
      cell: { at: [70, 20], upper_contact: [12, 20] },
    },
    [{ name: 'cell pressed', closed: ['cell'], nodes: [['plus'], ['minus']] }],
    { 'cell+': 'plus', 'L1+': 'plus', 'L1-': 'minus', 'cell-': 'minus' },
  );
  const nets = [netlist.nets[0], { ...netlist.nets[0], id: 'minus', pads: ['L1-', 'cell-'] }];
  const lampIn = (cuts: Netlist['cuts']) =>
    solveStates({ ...netlist, nets, cuts }, traced, card).states[0].lamps.L1;
  expect(lampIn([]).look).toBe('lit');
  expect(lampIn([{ piece: 1, at: [56, 20], widthMm: 1 }]).mA).toBeLessThan(1e-6);
});
