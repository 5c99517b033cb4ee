import { describe, expect, it } from 'vitest';
import { sayPower, solveStates } from '../../src/power/index.ts';
import type { LampColour } from '../../src/card/index.ts';
import { solve } from '../../src/power/solve.ts';
import { drawnCard, railCard } from './drawnCard.ts';

function report(colours: LampColour[], charge = 1) {
  const { card, traced, netlist } = railCard(colours.map((colour, i) => ({ id: `L${i + 1}`, colour })));
  return solveStates(netlist, traced, card, { charge });
}
const five = Array<LampColour>(5).fill('white');

describe('what a card does', () => {
  it('is dark at rest and lit when the cell is pressed', () => {
    const { states } = report(five);
    expect(Object.values(states[0]?.lamps ?? {}).every(({ look }) => look === 'dark')).toBe(true);
    expect(Object.values(states[1]?.lamps ?? {}).every(({ look }) => look === 'lit')).toBe(true);
  });

  // ngspice 39 for five white lamps on 3.0 V behind 15 ohm: 2.6398 mA each; tape and joints take under 1 % of it.
  it('gives five white lamps the reference current less what tape and joints take', () => {
    const mA = report(five).states[1]?.lamps['L3']?.mA ?? NaN;
    expect(mA).toBeLessThan(2.6398);
    expect(mA).toBeGreaterThan(0.99 * 2.6398);
  });

  it('names who robs whom, and the resistor that ends it', () => {
    const { balance, advice } = report(['red', 'white', 'white', 'white']);
    expect(balance[0]).toMatchObject({ robbers: ['L1'], robbed: ['L2', 'L3', 'L4'] });
    const resistor = advice.find(({ kind }) => kind === 'resistor');
    expect(resistor).toMatchObject({ lamps: ['L1'], series: 'E12' });
    if (resistor?.kind !== 'resistor') throw new Error('no resistor advised');
    const mended = railCard(
      (['red', 'white', 'white', 'white'] as const).map((colour, i) => {
        return { id: `L${i + 1}`, colour, series_ohm: i === 0 ? resistor.ohm : 0 };
      }),
    );
    const after = solveStates(mended.netlist, mended.traced, mended.card);
    expect(after.balance[0]?.robbed).toEqual([]);
    expect(after.balance[0]?.ratio).toBeCloseTo(resistor.ratioAfter, 6);
    expect(after.balance[0]?.ratio).toBeLessThan(1.3);
  });

  it('does not rob colours of one family', () => {
    expect(report(['red', 'amber', 'yellow']).balance[0]?.robbed).toEqual([]);
    expect(report(['white', 'blue', 'green', 'pink']).balance[0]?.robbed).toEqual([]);
  });

  it('tells three different stories of an all-white, an all-red and a mixed card', () => {
    const tells = (colours: LampColour[]) => sayPower(report(colours));
    const [white, red, mixed] = [tells(five), tells(['red', 'red', 'red']), tells(['red', 'white', 'white'])];
    expect(white.advice).toEqual([]);
    expect(red.advice.join()).toContain('in line with each');
    expect(mixed.tells.join()).toContain('robs');
    expect(white.tells.join()).not.toContain('robs');
  });

  it('says that one 1.5 V cell lights nothing', () => {
    const { card, traced, netlist } = railCard([{ id: 'L1', colour: 'red' }], { kind: 'LR44', at: [10, 60] });
    const found = solveStates(netlist, traced, card);
    expect(found.states[1]?.lamps['L1']?.lit).toBe(false);
    expect(found.advice).toContainEqual({ kind: 'cell-too-low', volt: 1.55, lamps: ['L1'] });
  });

  it('dims with age, and lights longer than it stays bright', () => {
    const { ageing, runTime } = report(five);
    const currents = ageing.map(({ lamps }) => lamps['L1'] ?? NaN);
    expect([...currents].sort((a, b) => b - a)).toEqual(currents);
    expect(runTime?.hoursLit).toBeGreaterThan(runTime?.hoursBright ?? Infinity);
  });

  // Estimates of an earlier study with 150 to 225 mAh usable: hours from fresh until each lamp falls under 0.1 mA.
  it.each([
    [1, 87, 131],
    [3, 41, 61],
    [5, 30, 45],
    [8, 24, 35],
  ])('%s white lamps stay lit for hours of the estimated order (%s to %s h)', (count, least, most) => {
    const hours = report(Array<LampColour>(count).fill('white')).runTime?.hoursLit ?? NaN;
    expect(hours).toBeGreaterThan(0.6 * least);
    expect(hours).toBeLessThan(1.6 * most);
  });

  it('draws the same spread from the same seed, round the reckoned current', () => {
    const [one, other] = [report(five), report(five)];
    expect(one.spread).toEqual(other.spread);
    const band = one.spread?.lamps['L1'];
    expect(band?.low).toBeLessThan(2.62);
    expect(band?.high).toBeGreaterThan(2.62);
  });
});

describe('joints', () => {
  it('finds at what resistance a joint darkens a lamp, as solving with that resistance shows', () => {
    const { card, traced, netlist } = railCard(five.map((colour, i) => ({ id: `L${i + 1}`, colour })));
    const { joints } = solveStates(netlist, traced, card);
    for (const { joint, dims, dimOhm } of joints.filter(({ kind }) => kind === 'lamp-leg')) {
      const series = (ohm: number) => {
        const lamps = card.lamps.map((lamp) =>
          joint === `legs of ${lamp.id}` ? { ...lamp, series_ohm: ohm } : lamp,
        );
        return solveStates(netlist, traced, { ...card, lamps }, { depth: 'states' }).states[1]?.lamps;
      };
      const id = dims[0] ?? '';
      expect(series(dimOhm * 0.99)?.[id]?.mA).toBeGreaterThan(0.5);
      expect(series(dimOhm * 1.01)?.[id]?.mA).toBeLessThan(0.5);
    }
  });

  it('puts the joint that all lamps share before the legs of one', () => {
    const { joints } = report(five);
    expect(joints[0]).toMatchObject({ kind: 'cell-face', dims: ['L1', 'L2', 'L3', 'L4', 'L5'] });
  });

  it('knows a seam between two strips of one net, and which lamps lie behind it', () => {
    const { card, traced, netlist } = drawnCard(
      [
        {
          net: 'plus',
          widthMm: 5,
          path: [
            [5, 40],
            [40, 40],
          ],
        },
        {
          net: 'plus',
          widthMm: 5,
          path: [
            [40.5, 40],
            [90, 40],
          ],
        },
        {
          net: 'minus',
          widthMm: 5,
          path: [
            [5, 50],
            [90, 50],
          ],
        },
      ],
      {
        cell: { at: [8, 60], upper_contact: [5, 40] },
        lamps: [
          { id: 'L1', plus: [20, 40], minus: [20, 50] },
          { id: 'L2', plus: [70, 40], minus: [70, 50] },
        ],
      },
      [{ name: 'cell pressed', closed: ['cell'], nodes: [['plus'], ['minus']] }],
      { 'cell+': 'plus', 'cell-': 'minus', 'L1+': 'plus', 'L1-': 'minus', 'L2+': 'plus', 'L2-': 'minus' },
    );
    const seam = solveStates(netlist, traced, card).joints.find(({ kind }) => kind === 'seam');
    expect(seam?.at?.[0]).toBeCloseTo(40, 0);
    expect(seam?.dims).toEqual(['L2']);
  });
});

describe('the tape lesson', () => {
  // A 190 mm run of 5 mm tape is 19 mohm by IEC 60028: splitting it cannot matter beside a cell of 15 ohm.
  it('changes no lamp by more than a thousandth when every strip is split', () => {
    const { tape } = report(five);
    expect(tape.ohm).toBeCloseTo(0.0187, 4);
    expect(tape.splitOhm).toBeCloseTo(2 * tape.ohm, 12);
    expect(tape.change).toBeGreaterThan(0);
    expect(tape.change).toBeLessThan(1e-3);
  });
});

describe('nets without an answer', () => {
  it('are told in words: an island, a short, a lamp on one strip, a part with an impossible value', () => {
    const { card, traced, netlist } = railCard([{ id: 'L1', colour: 'white' }]);
    const pressed = {
      ...netlist.states[1],
      nodes: [['plus', 'minus']],
      shorted: true,
    } as (typeof netlist.states)[number];
    const shorted = solveStates({ ...netlist, states: [pressed] }, traced, card);
    expect(shorted.states[0]?.load).toBe('shorted');
    expect(sayPower(shorted).tells.join()).toContain('It gets hot');
    expect(shorted.states[0]?.cellMA).toBeGreaterThan(150);

    const noPad = { ...netlist, netOf: { 'L1+': 'plus', 'L1-': 'minus', 'cell+': 'plus' } };
    expect(solveStates(noPad, traced, card).states[1]?.lamps['L1']?.mA).toBe(0);

    const one = solve({
      elements: [
        { kind: 'cell', id: 'cell', plus: 'p', minus: 'n', volt: 3, ohm: 15 },
        { kind: 'resistor', id: 'R', a: 'x', b: 'y', ohm: 0 },
        {
          kind: 'lamp',
          id: 'L',
          plus: 'x',
          minus: 'y',
          diode: { saturationA: 1e-20, slopeV: 0.05, ohm: 6 },
          seriesOhm: 0,
        },
      ],
    });
    expect(one.troubles).toEqual([{ kind: 'lamp-on-one-node', elements: ['L'], nodes: ['x', 'y'] }]);
    expect(one.amps('L')).toBe(0);

    expect(() => solve({ elements: [{ kind: 'resistor', id: 'R7', a: 'x', b: 'y', ohm: -2 }] })).toThrow(
      /R7/,
    );
    expect(() =>
      solve({ elements: [{ kind: 'cell', id: 'cell', plus: 'p', minus: 'n', volt: 3, ohm: 0 }] }),
    ).toThrow(/internal resistance/);
  });

  it('are told apart: lamps on copper that no cell reaches', () => {
    const { card, traced, netlist } = drawnCard(
      [
        {
          net: 'plus',
          widthMm: 5,
          path: [
            [5, 40],
            [90, 40],
          ],
        },
        {
          net: 'minus',
          widthMm: 5,
          path: [
            [5, 50],
            [90, 50],
          ],
        },
        {
          net: 'a',
          widthMm: 5,
          path: [
            [5, 80],
            [90, 80],
          ],
        },
        {
          net: 'b',
          widthMm: 5,
          path: [
            [5, 90],
            [90, 90],
          ],
        },
      ],
      {
        cell: { at: [8, 60], upper_contact: [5, 40] },
        lamps: [{ id: 'L9', plus: [20, 80], minus: [20, 90] }],
      },
      [{ name: 'cell pressed', closed: ['cell'], nodes: [['plus'], ['minus'], ['a'], ['b']] }],
      { 'cell+': 'plus', 'cell-': 'minus', 'L9+': 'a', 'L9-': 'b' },
    );
    const found = solveStates(netlist, traced, card);
    expect(found.states[0]?.troubles).toContainEqual(
      expect.objectContaining({ kind: 'afloat', elements: ['L9'] }),
    );
    expect(sayPower(found).tells.join()).toContain('L9 reaches no face of the cell');
  });
});
