import { describe, expect, it } from 'vitest';
import { cardFrom, type CardInput } from '../../src/card/index.ts';
import { buildNetlist, verdictOf } from '../../src/net/index.ts';
import { attach, foldTolerance } from '../../src/parts/index.ts';
import { sayFinding } from '../../src/record/sayFinding.ts';
import { clear, rectangle, strip, traceDrawn, type Laid } from './drawnSheet.ts';

/** A base of 74 x 70 mm with a flap opened to the right: its strip lands on an opening in the minus rail. */
const base = [
  strip(5, [10, 60], [10, 10], [38, 10]),
  strip(5, [42, 10], [62, 10], [62, 52], [30, 52]),
  clear(59, 28.5, 65, 31.5),
];
const flap = {
  id: 'F1',
  fold: [
    [74, 20],
    [74, 40],
  ],
  outline: rectangle(74, 20, 100, 40).map((p) => [...p] as [number, number]),
  use: 'press',
} as const;
const onFlap = (y0: number, y1: number, x = 86): Laid => strip(5, [x, y0], [x, y1]);

function cardOf(more: Partial<CardInput> = {}) {
  return cardFrom(
    {
      format: 'foilproof/1',
      base: { width_mm: 74, height_mm: 70, margin_mm: 30 },
      lamps: [{ id: 'L1', plus: [38, 10], minus: [42, 10], intent: { contact: 'C1' } }],
      cell: { at: [32, 52], up: '+', upper_contact: [10, 55] },
      contacts: [{ id: 'C1', at: [62, 30], reach_mm: 6, flap: 'F1' }],
      flaps: [
        {
          ...flap,
          fold: [
            [74, 20],
            [74, 40],
          ],
        },
      ],
      ...more,
    },
    'flaps',
  );
}

function check(laid: Laid[], more: Partial<CardInput> = {}) {
  const traced = traceDrawn({ width: 74, height: 70, marginMm: 30, laid });
  const card = cardOf(more);
  return { traced, card, ...buildNetlist(traced, card) };
}

const saying = ({ findings }: ReturnType<typeof check>) =>
  findings.filter(({ weight, kind }) => weight !== 'note' && kind !== 'seam');

describe('a flap that closes a contact', () => {
  it('says nothing where its strip lands on both sides, and the state joins them', () => {
    const { traced, card, states, netOf, findings } = check([...base, onFlap(25, 35)]);
    expect(findings.filter(({ weight }) => weight !== 'note')).toEqual([]);
    expect(verdictOf(findings)).toBe('clear');
    const pressed = states.find(({ closed }) => closed.includes('C1'))!;
    const node = (pad: string) => pressed.nodes.findIndex((nets) => nets.includes(netOf[pad]));
    expect(node('C1a')).toBe(node('C1b'));
    const { meetings } = attach(traced, card);
    // 5 mm wide, 25 to 28.5 mm and 31.5 to 35 mm along: two overlaps of 17.5 mm^2.
    for (const { overlapMm2 } of meetings) expect(Math.abs(overlapMm2 - 17.5)).toBeLessThan(1);
    const [tolerance] = foldTolerance(traced, card, meetings);
    expect(tolerance.share).toBe(1);
  });

  it('tells by how many mm and which way its strip misses', () => {
    const said = saying(check([...base, onFlap(30, 38)]));
    expect(said).toMatchObject([{ kind: 'missed-contact', lamps: ['L1'], facts: { direction: 'below' } }]);
    expect(said[0].sizeMm).toBeCloseTo(1.5, 0);
    expect(sayFinding(said[0]).say).toMatch(/1\.\d mm below its partner/);
  });

  it('tells a miss to the side', () => {
    const said = saying(check([...base, onFlap(25, 35, 80)]));
    expect(said.map(({ kind }) => kind)).toEqual(['missed-contact', 'missed-contact']);
    expect(said[0].facts.direction).toBe('right');
    expect(Math.abs(said[0].sizeMm! - 1)).toBeLessThan(0.3);
  });

  it('has little tolerance left where it lands by a hair', () => {
    // It overlaps the rail by 0.6 mm across; a fold off by 0.5 mm leaves 0.1 mm.
    const { traced, card } = check([...base, onFlap(25, 35, 81.6)]);
    const [tolerance] = foldTolerance(traced, card, attach(traced, card).meetings);
    // 3.5 mm long, 1 mm^2 wanted: met while the shift, even in +-0.5 mm, stays above 1 / 3.5 - 0.6 mm, in 0.81 of draws.
    expect(Math.abs(tolerance.share - 0.81)).toBeLessThan(0.12);
    expect(tolerance).toEqual(foldTolerance(traced, card, attach(traced, card).meetings)[0]);
  });

  it('tells copper that shorts when the flap is closed', () => {
    // It lands on the minus rail and reaches over to a spur of the plus rail.
    const spur = strip(4, [10, 36], [52, 36]);
    const said = saying(check([...base, spur, onFlap(25, 35), strip(4, [86, 34], [97, 34])]));
    expect(said.map(({ kind, facts }) => [kind, facts.closed])).toContainEqual(['bridge', 'F1']);
  });
});

describe('the stroke', () => {
  const wave: Laid[] = [0, 1, 2].map((k) => strip(3, [20 + 12 * k, 20], [20 + 12 * k, 40]));
  const rail = strip(5, [14, 46], [56, 46]);
  const contact = (id: string, order: number, x: number): NonNullable<CardInput['contacts']>[number] => ({
    id,
    how: 'stroke',
    order,
    at: [x, 41.8],
    reach_mm: 4,
  });
  const of = (orders: number[]): Partial<CardInput> => ({
    lamps: [],
    cell: undefined,
    flaps: [],
    contacts: orders.map((order, k) => contact(`C${k + 1}`, order, 20 + 12 * k)),
  });

  it.each([[[1, 2, 3]], [[3, 2, 1]]])('may run either way: %j', (orders) => {
    expect(saying(check([...wave, rail], of(orders)))).toEqual([]);
  });

  it('tells contacts that are numbered out of their order', () => {
    const said = saying(check([...wave, rail], of([1, 3, 2])));
    expect(said.map(({ kind, facts }) => [kind, facts.among])).toEqual([['missed-contact', 'C3, C2']]);
  });
});

describe('foam round the cell (heights by the IEC 60086 size code)', () => {
  const foam = (layers: number, layer_mm: number): Partial<CardInput> => ({
    plan: {
      foam: [{ outline: rectangle(20, 40, 44, 64).map((p) => [...p] as [number, number]), layers, layer_mm }],
    },
  });
  const kinds = (layers: number, mm: number) =>
    saying(check([...base, onFlap(25, 35)], foam(layers, mm))).map(({ kind }) => kind);

  it.each([
    [2, 2, []],
    [1, 2, ['lit-at-rest']],
    [4, 2, ['missed-contact']],
  ] as const)('%d layers of %d mm round a cell of 3.2 mm: %j', (layers, mm, expected) => {
    expect(kinds(layers, mm)).toEqual(expected);
  });
});

describe('a patch over a crossing', () => {
  // The minus rail runs beneath, the plus spur over it.
  const crossing = (
    x0: number,
    y0: number,
    x1: number,
    y1: number,
  ): { laid: Laid[]; more: Partial<CardInput> } => ({
    laid: [base[0], base[1], clear(x0, y0, x1, y1), strip(4, [10, 40], [72, 40])],
    more: {
      contacts: [],
      flaps: [],
      lamps: [{ id: 'L1', plus: [38, 10], minus: [42, 10] }],
      patches: [
        {
          id: 'K1',
          outline: rectangle(x0, y0, x1, y1).map((p) => [...p] as [number, number]),
          beneath: [
            {
              id: 'rail',
              width_mm: 5,
              path: [
                [62, 20],
                [62, 50],
              ],
            },
          ],
        },
      ],
    },
  });

  it('is wide enough with 2 mm to spare all round', () => {
    const { laid, more } = crossing(56, 35, 68, 45);
    expect(saying(check(laid, more))).toEqual([]);
  });

  it('is told where it covers the crossing by less', () => {
    const { laid, more } = crossing(58.5, 35, 68, 45);
    const said = saying(check(laid, more));
    expect(said).toMatchObject([{ kind: 'tight', sheet: 'K1', facts: { patch: 'K1' } }]);
    expect(said[0].sizeMm).toBeCloseTo(1, 0);
  });
});
