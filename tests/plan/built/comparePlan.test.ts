import { describe, expect, it } from 'vitest';
import type { Card } from '../../../src/card/index.ts';
import { comparePlan } from '../../../src/plan/built/comparePlan.ts';
import type { Ribbon } from '../../../src/plan/strip/ribbon.ts';
import { nets } from '../../../src/check/nets.ts';
import { laid, planned, smallCard } from './layCard.ts';

function compare(card: Card, ribbons: Iterable<Ribbon>, cuts: Ribbon[] = []) {
  return comparePlan(laid(card, ribbons, cuts), card);
}

/** What holds, nets and plan together; this card's cell rests on bare paper, which is said too. */
function holding(card: Card, ribbons: Iterable<Ribbon>, cuts: Ribbon[] = []) {
  return nets(laid(card, ribbons, cuts), card).netlist.findings.filter(
    ({ kind, weight }) => weight === 'holds' && kind !== 'missed-contact',
  );
}

const moved = ({ path, widthMm }: Ribbon, dx: number, dy: number): Ribbon => ({
  path: path.map(([x, y]) => [x + dx, y + dy] as const),
  widthMm,
});

describe('a build as planned', () => {
  it('has no finding and all strips laid', () => {
    const card = smallCard();
    const result = compare(card, planned(card).values());
    expect(result.findings).toEqual([]);
    expect(result.progress).toEqual({ laid: 8, of: 8 });
  });

  it('takes a hand’s unsteadiness of half a millimetre for as planned', () => {
    const card = smallCard();
    const ribbons = [...planned(card).values()].map((r, k) =>
      moved(r, k % 2 ? 0.5 : -0.4, k % 3 ? 0.4 : -0.5),
    );
    expect(compare(card, ribbons).findings).toEqual([]);
  });
});

describe('a part laid elsewhere', () => {
  it('leaves the same to say as a look at everything anew', () => {
    const card = smallCard();
    const ribbons = planned(card);
    ribbons.delete('minus 2');
    const traced = laid(card, ribbons.values());
    comparePlan(traced, card);
    const lamps = card.lamps.map((lamp) => ({ ...lamp, plus: lamp.minus, minus: lamp.plus }));
    const [x, y] = card.plan!.strips.find(({ id }) => id === 'minus 2')!.path[0];
    const moved: (typeof lamps)[0] = { ...lamps[0], plus: [x, y], minus: [x + 3, y] };
    const over = { ...card, lamps: [moved] };
    for (const other of [{ ...card, lamps }, over, card])
      expect(comparePlan(traced, other)).toEqual(comparePlan({ ...traced }, other));
  });
});

describe('a build with one fault', () => {
  it('names a strip that is missing', () => {
    const card = smallCard();
    const ribbons = planned(card);
    ribbons.delete('minus 2');
    const { findings, progress } = compare(card, ribbons.values());
    expect(findings.map((f) => [f.kind, f.facts.strip, f.weight])).toEqual([
      ['missing-strip', 'minus 2', 'holds'],
    ]);
    expect(progress).toEqual({ laid: 7, of: 8 });
  });

  it.each([
    [3, 0],
    [-3.5, 0],
    [2, 0],
  ])('says how far a strip lies beside its place (%f, %f mm)', (dx, dy) => {
    const card = smallCard();
    const ribbons = planned(card);
    ribbons.set('plus 2', moved(ribbons.get('plus 2')!, dx, dy));
    const { findings } = compare(card, ribbons.values());
    expect(findings.map((f) => [f.kind, f.facts.strip])).toEqual([['shifted-strip', 'plus 2']]);
    expect(findings[0].facts.dxMm).toBeCloseTo(dx, 0);
    expect(Math.abs(findings[0].sizeMm! - Math.hypot(dx, dy))).toBeLessThan(0.8);
  });

  it('finds copper that the plan does not have', () => {
    const card = smallCard();
    const ribbons = [
      ...planned(card).values(),
      {
        path: [
          [85, 30],
          [97, 45],
        ] as const,
        widthMm: 4,
      },
    ];
    const { findings } = compare(card, ribbons);
    expect(findings.map((f) => f.kind)).toEqual(['extra-strip']);
    expect(Math.hypot(findings[0].at[0] - 91, findings[0].at[1] - 37.5)).toBeLessThan(1);
  });

  it('finds a gap by the nets it parts', () => {
    const card = smallCard();
    const cut: Ribbon = {
      path: [
        [62, 5],
        [62, 15],
      ],
      widthMm: 0.6,
    };
    const findings = holding(card, planned(card).values(), [cut]);
    expect(findings.map((f) => f.kind)).toEqual(['gap']);
    expect(findings[0].at[0]).toBeCloseTo(62, 0);
    expect(findings[0].sizeMm).toBeGreaterThan(0.2);
    expect(findings[0].sizeMm).toBeLessThan(1.2);
  });

  it('finds a bridge by the planned nets it joins, at the place between them', () => {
    const card = smallCard();
    const sliver: Ribbon = {
      path: [
        [62, 11],
        [62, 63],
      ],
      widthMm: 1.5,
    };
    const findings = holding(card, [...planned(card).values(), sliver]);
    expect(findings.map((f) => f.kind)).toEqual(['bridge']);
    expect(findings[0].at[0]).toBeCloseTo(62, 0);
  });

  it('says by how much a shifted lamp misses its light hole', () => {
    const card = smallCard();
    card.lamps[1].plus = [53, 34.5];
    card.lamps[1].minus = [53, 39.5];
    const { findings } = compare(card, planned(card).values());
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({ kind: 'shifted-lamp', lamps: ['L2'], facts: { hole: 'H2' } });
    expect(findings[0].facts.holeMissMm).toBeCloseTo(3, 5);
  });
});

describe('a half-built card', () => {
  it('has strips still to lay, which hold nothing', () => {
    const card = smallCard();
    const ribbons = [...planned(card).values()].slice(0, 3);
    const { findings, progress, halfBuilt } = compare(card, ribbons);
    expect(halfBuilt).toBe(true);
    expect(progress).toEqual({ laid: 3, of: 8 });
    expect(findings.every((f) => f.kind === 'missing-strip' && f.weight === 'note')).toBe(true);
    expect(findings).toHaveLength(5);
  });
});
