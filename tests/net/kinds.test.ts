import { describe, expect, it } from 'vitest';
import { cardFrom, type CardInput } from '../../src/card/index.ts';
import { buildNetlist, verdictOf } from '../../src/net/index.ts';
import type { Crossing, Traced } from '../../src/trace/index.ts';
import { clear, rectangle, strip, traceDrawn, type Laid } from './drawnSheet.ts';

/**
 * One lamp on two rails, drawn: plus rail left, minus rail below, a cell in the corner. Every kind of finding once where
 * it is true and once where it is not. Sizes are common practice, no source.
 */
const plusRail = strip(5, [10, 60], [10, 10], [38, 10]);
const minusRail = strip(5, [42, 10], [62, 10], [62, 52], [30, 52]);
const lampL1: NonNullable<CardInput['lamps']>[number] = { id: 'L1', plus: [38, 10], minus: [42, 10] };

/** What the photograph hides of a sheet: here all of it is burnt out. */
const burntOut: Partial<Traced> = {
  blind: { columns: 74, rows: 70, cellMm: 1, originMm: [0, 0], cells: new Uint8Array(74 * 70).fill(1) },
};

function findings(laid: Laid[], more: Partial<CardInput> = {}, known: Partial<Traced> = {}) {
  const traced = { ...traceDrawn({ width: 74, height: 70, laid }), ...known };
  const card = cardFrom(
    {
      format: 'foilproof/1',
      base: { width_mm: 74, height_mm: 70 },
      lamps: [lampL1],
      cell: { kind: 'CR2032', at: [32, 52], up: '+', upper_contact: [10, 55] },
      ...more,
    },
    'drawn',
  );
  return buildNetlist(traced, card);
}

const sound = [plusRail, minusRail];
const kinds = (laid: Laid[], more?: Partial<CardInput>) =>
  findings(laid, more)
    .findings.filter(({ weight }) => weight !== 'note')
    .map(({ kind }) => kind);

describe('a sound card', () => {
  it('has nothing to say and is clear', () => {
    const { findings: said, states } = findings(sound);
    expect(said.filter(({ weight }) => weight !== 'note')).toEqual([]);
    expect(verdictOf(said)).toBe('clear');
    expect(states.map(({ name }) => name)).toEqual(['at rest', 'cell pressed']);
  });

  it('lists what no photograph shows', () => {
    expect(findings(sound).notSeen.length).toBeGreaterThan(1);
  });
});

describe('gap', () => {
  it.each([0.8, 1.5, 3])('is told in mm where the rail is cut by %d mm', (mm) => {
    const cut = clear(59, 30 - mm / 2, 65, 30 + mm / 2);
    const gap = findings([...sound, cut]).findings.find(({ kind }) => kind === 'gap')!;
    expect(gap.lamps).toEqual(['L1']);
    expect(gap.at[0]).toBeCloseTo(62, 0);
    expect(gap.at[1]).toBeCloseTo(30, 0);
    expect(Math.abs(gap.sizeMm! - mm)).toBeLessThan(0.25);
    expect(gap.certainty).toBeGreaterThan(0.5);
  });

  it('is told on both sides of a short planned part, also where one is cut aslant, and the brinks are not tight besides', () => {
    const wide = [plusRail, strip(8, [42, 10], [62, 10], [62, 52], [30, 52])];
    const aslant: [number, number][] = [[57, 27.2], [67, 30.2], [67, 30.9], [57, 27.9]]; // prettier-ignore
    const plan: CardInput['plan'] = {
      strips: [
        { id: 'minus', net: 'minus', width_mm: 8, path: [[42, 10], [62, 10], [62, 52], [30, 52]] }, // prettier-ignore
      ],
    };
    const said = findings([...wide, { paper: 'ring', ring: aslant }, clear(57, 39.4, 67, 40.4)], { plan });
    const gaps = said.findings.filter(({ kind }) => kind === 'gap').map(({ at }) => Math.round(at[1]));
    expect(gaps.sort()).toEqual([29, 40]);
    expect(said.findings.filter(({ kind }) => kind === 'tight')).toEqual([]);
  });

  it('is not told where a contact closes the opening', () => {
    const cut = clear(59, 28.5, 65, 31.5);
    const more: Partial<CardInput> = { contacts: [{ id: 'C1', at: [62, 30], reach_mm: 4 }] };
    const { findings: said, states } = findings([...sound, cut], more);
    expect(said.filter(({ weight }) => weight !== 'note')).toEqual([]);
    expect(states.map(({ closed }) => closed)).toEqual([[], ['cell'], ['cell', 'C1']]);
  });

  it('is not told where a lamp spans it', () => {
    expect(kinds(sound)).not.toContain('gap');
  });

  it('is told on a card of which no part is known', () => {
    const cut = clear(59, 29.4, 65, 30.6);
    expect(kinds([...sound, cut], { lamps: [], cell: undefined })).toContain('gap');
  });

  it('is not told again where the maker metered that it conducts', () => {
    const cut = clear(59, 29.4, 65, 30.6);
    const join = { at: [62, 30] as [number, number], conducts: true };
    expect(kinds([...sound, cut], { joins: [join] })).not.toContain('gap');
  });
});

describe('bridge', () => {
  const parallel = [plusRail, strip(5, [42, 10], [62, 10], [62, 52], [20, 52], [20, 44])];
  it('is told at the sliver that joins the rails, once, with the cell shorted by it', () => {
    const { findings: said, states } = findings([...parallel, strip(1, [11, 46], [20, 46])]);
    const roots = said.filter(({ weight }) => weight === 'holds');
    expect(roots.map(({ kind }) => kind)).toEqual(['bridge']);
    expect(roots[0].at[0]).toBeCloseTo(15.5, -0.3);
    expect(roots[0].at[1]).toBeCloseTo(46, 0);
    expect(roots[0].facts.shorts).toBe(true);
    expect(roots[0].lamps).toEqual(['L1']);
    expect(states[1].shorted).toBe(true);
  });

  it('is told twice where two slivers join them', () => {
    const more = [strip(1, [11, 46], [20, 46]), strip(1, [11, 50], [20, 50])];
    const places = findings([...parallel, ...more])
      .findings.filter(({ kind }) => kind === 'bridge')
      .map(({ at }) => Math.round(at[1]));
    expect(places.sort()).toEqual([46, 50]);
  });

  it('is a place to look at where the tape round it is burnt out', () => {
    const said = findings([...parallel, strip(1, [11, 46], [20, 46])], {}, burntOut);
    const bridge = said.findings.find(({ kind }) => kind === 'bridge')!;
    expect(bridge.certainty).toBeLessThan(0.5);
    expect(bridge.facts.unsure).toBe(true);
  });

  it('is not told where the sliver ends before the other rail', () => {
    expect(kinds([...parallel, strip(1, [11, 46], [16.2, 46])])).not.toContain('bridge');
  });
});

describe('bridge, with a plan', () => {
  const rail = (id: string, path: [number, number][]) => ({ id, net: id, width_mm: 5, path });
  const plus: [number, number][] = [[10, 60], [10, 10], [38, 10]]; // prettier-ignore
  const minus: [number, number][] = [[42, 10], [62, 10], [62, 52], [20, 52], [20, 34]]; // prettier-ignore
  const plan: CardInput['plan'] = { strips: [rail('plus', plus), rail('minus', minus)] };
  const laid = [strip(5, ...plus), strip(5, ...minus)];
  const scrap = strip(3, [11, 36], [19, 36]);
  const bridgesOf = (more: Laid[]) =>
    findings([...laid, ...more], { plan, cell: undefined }).findings.filter(({ kind }) => kind === 'bridge');

  it('is told in a part that gaps have left without a lamp or the cell', () => {
    const gaps = [clear(7, 42, 13, 43), clear(7, 27, 13, 28), clear(17, 47, 23, 48)];
    const [bridge, ...others] = bridgesOf([scrap, ...gaps]);
    expect(others).toEqual([]);
    expect(Math.hypot(bridge.at[0] - 15, bridge.at[1] - 36)).toBeLessThan(2);
    expect([bridge.facts.between, bridge.facts.and].sort()).toEqual(['minus', 'plus']);
  });

  it('is told of strips that no part lies on, though one begins beside the other', () => {
    const said = findings([...laid, scrap], { plan, cell: undefined, lamps: [] }).findings;
    const [bridge, ...others] = said.filter(({ kind }) => kind === 'bridge');
    expect(others).toEqual([]);
    expect(Math.hypot(bridge.at[0] - 15, bridge.at[1] - 36)).toBeLessThan(2);
  });

  it('is told where copper lies beside the plan, not where a strip is narrow on the way to it', () => {
    const [bridge] = bridgesOf([scrap, clear(16, 44, 19.5, 45), clear(20.5, 44, 24, 45)]);
    expect(Math.hypot(bridge.at[0] - 15, bridge.at[1] - 36)).toBeLessThan(2);
    expect(Math.abs(bridge.sizeMm! - 3)).toBeLessThan(0.6);
  });

  it('is not told of strips laid as they are planned', () => {
    expect(bridgesOf([])).toEqual([]);
  });

  it('is told beside a cell whose lower face lies on the strip of the other, and that is told too', () => {
    const cell: CardInput['cell'] = { kind: 'CR2032', at: [10, 58], up: '+', upper_contact: [10, 45] };
    const kindsOf = (more: Laid[]) =>
      findings([...laid, ...more], { plan, cell })
        .findings.map(({ kind }) => kind)
        .filter((kind) => kind === 'bridge' || kind === 'shorted-cell')
        .sort();
    expect(kindsOf([])).toEqual(['shorted-cell']);
    expect(kindsOf([scrap])).toEqual(['bridge', 'shorted-cell']);
  });
});

describe('shorted-cell', () => {
  it('is told where copper of the upper face lies under the rim', () => {
    const rim = findings([...sound, strip(3, [10, 46], [26, 46])]).findings[0];
    expect(rim.kind).toBe('shorted-cell');
    expect(rim.facts.rim).toBe(true);
    expect(Math.hypot(rim.at[0] - 25, rim.at[1] - 46)).toBeLessThan(2);
  });

  it('is not told where that copper stops short of the cell', () => {
    expect(kinds([...sound, strip(3, [10, 46], [20, 46])])).not.toContain('shorted-cell');
  });

  it('is not told of the can’s own shine: copper wholly on the cell leads nowhere', () => {
    const toRim = strip(5, [42, 10], [62, 10], [62, 52], [42.5, 52]);
    const shine = strip(1.4, [24.5, 47], [28, 43.5]);
    const { findings: said, netOf } = findings([plusRail, toRim, shine]);
    expect(said.filter(({ weight }) => weight === 'holds')).toEqual([]);
    expect(netOf['cell-']).toBe(netOf['L1-']);
  });
});

describe('lamps', () => {
  it('reversed-lamp by the nets of its pads', () => {
    const turned = { ...lampL1, plus: lampL1.minus, minus: lampL1.plus };
    const said = findings(sound, { lamps: [turned] }).findings[0];
    expect(said).toMatchObject({ kind: 'reversed-lamp', lamps: ['L1'], weight: 'holds' });
  });

  it('tells a cell upside down once, not every lamp', () => {
    const branch = [strip(3, [10, 30], [34, 30]), strip(3, [38, 30], [62, 30])];
    const second = { id: 'L2', plus: [34, 30] as [number, number], minus: [38, 30] as [number, number] };
    const cell = { kind: 'CR2032' as const, at: [32, 52] as [number, number], up: '-' as const };
    const said = findings([...sound, ...branch], {
      lamps: [lampL1, second],
      cell: { ...cell, upper_contact: [10, 55] },
    }).findings.filter(({ weight }) => weight === 'holds');
    expect(said).toMatchObject([{ kind: 'reversed-lamp', facts: { cell: true }, lamps: ['L1', 'L2'] }]);
  });

  it('lamp-off-strip is a doubt where the photograph is burnt out beside the pad', () => {
    const lamps = [{ id: 'L1', plus: [38, 25], minus: [42, 25] }] satisfies CardInput['lamps'];
    const off = (hidden = {}) =>
      findings(sound, { lamps, cell: undefined }, hidden).findings.find(
        ({ kind }) => kind === 'lamp-off-strip',
      )!;
    expect(off()).toMatchObject({ weight: 'holds' });
    const doubt = off(burntOut);
    expect(doubt).toMatchObject({ weight: 'check' });
    expect(doubt!.certainty).toBeLessThan(0.5);
  });

  it('lamp-off-strip is a doubt where a finger lies over the pad, none where only the lamp is no paper', () => {
    const lamps = [{ id: 'L1', plus: [38, 25], minus: [42, 25] }] satisfies CardInput['lamps'];
    /** White paper by the millimetre, and skin within so much of a place. */
    const skin = (at: [number, number], reach: number): Partial<Traced> => {
      const [columns, rows] = [74, 70];
      const lab = [92, 0, 4].map((v) => new Float32Array(columns * rows).fill(v));
      for (let k = 0; k < columns * rows; k++) {
        const far = Math.hypot((k % columns) + 0.5 - at[0], Math.floor(k / columns) + 0.5 - at[1]);
        if (far < reach) [62, 16, 20].forEach((v, n) => (lab[n][k] = v));
      }
      const [L, a, b] = lab;
      return { open: { columns, rows, cellMm: 1, originMm: [0, 0], lab: [L, a, b] } };
    };
    const off = (known: Partial<Traced>) =>
      findings(sound, { lamps, cell: undefined }, known).findings.find(
        ({ kind }) => kind === 'lamp-off-strip',
      )!;
    expect(off(skin([40, 25], 2.4))).toMatchObject({ weight: 'holds' });
    expect(off(skin([36, 29], 8))).toMatchObject({ weight: 'check' });
  });

  it('a break that the picture leaves open names the lamps it may starve, and holds nothing', () => {
    const cut = clear(59, 28.5, 65, 31.5);
    expect(verdictOf(findings([...sound, cut]).findings)).toBe('hold');
    const open = findings([...sound, cut], {}, burntOut).findings;
    expect(open.find(({ kind }) => kind === 'gap')).toMatchObject({ weight: 'check', lamps: ['L1'] });
    expect(open.map(({ kind }) => kind)).not.toContain('unfed-lamp');
    expect(verdictOf(open)).toBe('clear-once-checked');
  });

  it('a break right across names its lamps, also where its edges come nearer far from its middle', () => {
    const wide = strip(8, [42, 10], [62, 10], [62, 52], [30, 52]);
    const wedge: Laid = { paper: 'ring', ring: [[57, 24], [57, 26], [67, 35], [67, 26]] }; // prettier-ignore
    const plan = { strips: [{ id: 'minus', net: 'minus', width_mm: 8, path: [[42, 10], [62, 10], [62, 52], [30, 52]] }] } satisfies CardInput['plan']; // prettier-ignore
    const said = findings([plusRail, wide, wedge], { plan }).findings.filter(
      ({ weight }) => weight !== 'note',
    );
    expect(said.map(({ kind, lamps }) => [kind, lamps])).toEqual([['gap', ['L1']]]);
  });

  it('an unfed lamp is a doubt where the strip is burnt out beside its pad', () => {
    const short = [plusRail, strip(5, [42, 10], [62, 10], [62, 24]), strip(5, [30, 52], [50, 52])];
    const unfed = (hidden = {}) =>
      findings(short, {}, hidden).findings.find(({ kind }) => kind === 'unfed-lamp');
    expect(unfed()).toMatchObject({ weight: 'holds' });
    const beside = new Uint8Array(74 * 70);
    beside[10 * 74 + 44] = 1;
    const blind = { columns: 74, rows: 70, cellMm: 1, originMm: [0, 0] as [number, number], cells: beside };
    const doubt = unfed({ blind });
    expect(doubt).toMatchObject({ weight: 'check' });
    expect(doubt!.certainty).toBeLessThan(0.5);
  });

  describe('a faint line between strips', () => {
    const faint = (atA: [number, number], atB: [number, number]) => {
      const at: [number, number] = [(atA[0] + atB[0]) / 2, (atA[1] + atB[1]) / 2];
      const mm = Math.hypot(atA[0] - atB[0], atA[1] - atB[1]);
      return { faint: [{ at, atA, atB, mm, widthMm: 0.6, chance: 0.2 }] };
    };
    const told = (known: Partial<Traced>, more: Partial<CardInput> = {}) =>
      findings(sound, more, known).findings.filter(({ kind }) => kind === 'bridge');

    it('is a place to look at where it would short the cell, and holds nothing', () => {
      const [bridge, ...others] = told(faint([12, 30], [59.6, 30]));
      expect(others).toEqual([]);
      expect(bridge).toMatchObject({ weight: 'check', facts: { shorts: true, faint: true } });
      expect(bridge.certainty).toBeLessThan(0.5);
    });

    it('is not told along one strip, nor under the lamp that joins the two', () => {
      expect(told(faint([10, 15], [10, 55]))).toEqual([]);
      expect(told(faint([38.5, 10], [41.5, 10]))).toEqual([]);
    });

    it('is told by the plan where a gap has left a strip without a part', () => {
      const parted = [...sound, clear(59, 20, 65, 22)];
      const aside = strip(5, [20, 30], [20, 60], [10, 60]);
      const strips = [
        { id: 'plus', net: 'plus', width_mm: 5, path: [[10, 60], [10, 10], [38, 10]] },
        { id: 'minus', net: 'minus', width_mm: 5, path: [[42, 10], [62, 10], [62, 52], [30, 52]] },
      ] satisfies NonNullable<CardInput['plan']>['strips']; // prettier-ignore
      const line = faint([12, 30], [59.6, 30]);
      const of = (more: Partial<CardInput>) =>
        findings([...parted, aside], { cell: undefined, ...more }, line).findings.filter(
          ({ facts }) => facts.faint === true,
        );
      expect(of({ plan: { strips } })).toHaveLength(1);
      expect(of({})).toEqual([]);
    });
  });

  it('a face of the cell meets nothing for sure only where the picture shows the place', () => {
    const cell: CardInput['cell'] = { kind: 'CR2032', at: [32, 52], up: '+', upper_contact: [20, 35] };
    const missed = (hidden = {}) =>
      findings(sound, { cell }, hidden).findings.find(({ kind }) => kind === 'missed-contact');
    expect(missed()).toMatchObject({ weight: 'holds' });
    expect(missed(burntOut)).toMatchObject({ weight: 'check' });
  });

  it('lamp-off-strip by how far', () => {
    const lifted: typeof lampL1 = { id: 'L1', plus: [38, 15], minus: [42, 15] };
    const off = findings(sound, { lamps: [lifted] }).findings[0];
    expect(off).toMatchObject({ kind: 'lamp-off-strip', lamps: ['L1'], facts: { pad: 'both' } });
    expect(off.sizeMm).toBeCloseTo(2.5, 0);
  });

  it('lamp-on-one-strip where the strip runs on beneath it', () => {
    const uncut = [strip(5, [10, 60], [10, 10], [62, 10], [62, 40])];
    const small: typeof lampL1 = { id: 'L1', plus: [38.4, 10], minus: [41.6, 10] };
    expect(kinds(uncut, { lamps: [small], cell: undefined })).toEqual(['lamp-on-one-strip']);
  });

  it('unfed-lamp once for all that lack the same strip, with the side', () => {
    const short = [plusRail, strip(5, [42, 10], [62, 10], [62, 24])];
    const said = findings([...short, strip(5, [30, 52], [50, 52])]).findings.filter(
      ({ weight }) => weight === 'holds',
    );
    expect(said).toMatchObject([{ kind: 'unfed-lamp', lamps: ['L1'], facts: { side: '-' } }]);
  });

  it('lit-at-rest where a lamp lights before its own contact', () => {
    const more: Partial<CardInput> = {
      lamps: [{ ...lampL1, intent: { contact: 'C1' } }],
      contacts: [
        {
          id: 'C1',
          at: [
            [62, 20],
            [62, 40],
          ],
          reach_mm: 4,
        },
      ],
    };
    expect(kinds(sound, more)).toContain('lit-at-rest');
    const cut = clear(59, 28.5, 65, 31.5);
    expect(kinds([...sound, cut], { ...more, contacts: [{ id: 'C1', at: [62, 30], reach_mm: 4 }] })).toEqual(
      [],
    );
  });

  it('missed-contact where copper lies on one side only', () => {
    const more: Partial<CardInput> = { contacts: [{ id: 'C1', at: [24, 30], reach_mm: 3 }] };
    expect(kinds(sound, more)).toContain('missed-contact');
  });
});

describe('layout', () => {
  it('tight under the limit, not over it', () => {
    const stub = (gap: number) => strip(2, [12.5, 46], [59.5 - gap, 46]);
    expect(kinds([...sound, stub(0.6)].slice(0), { cell: undefined, lamps: [lampL1] })).toContain('tight');
    expect(kinds([...sound, stub(1.6)], { cell: undefined, lamps: [lampL1] })).not.toContain('tight');
  });

  it('tight where the picture shows a cut between copper that the plan keeps apart, a gap where no plan says so', () => {
    const laid = [...sound, strip(2, [12.5, 46], [58.9, 46])];
    const { pieces } = traceDrawn({ width: 74, height: 70, laid });
    const pieceAt = (x: number): number =>
      pieces.find(({ box }) => box.x0 < x && box.x1 > x && box.y1 > 50)!.id;
    const cut: Crossing = {
      at: [59.2, 46],
      along: [1, 0],
      widthMm: 0.6,
      stripMm: 2,
      piece: pieceAt(20),
      other: pieceAt(61),
      opened: true,
      ...{ gap: 0.95, seam: 0.02, glare: 0.03 },
    };
    const told = (strips: NonNullable<CardInput['plan']>['strips']) =>
      findings(laid, { lamps: [], cell: undefined, plan: { strips } }, { crossings: [cut] })
        .findings.filter(({ at }) => Math.hypot(at[0] - 59.2, at[1] - 46) < 1.5)
        .map(({ kind }) => kind);
    const rail = (id: string, path: [number, number][]) => ({ id, net: id, width_mm: 5, path });
    const plus = rail('plus', [[10, 60], [10, 10], [38, 10]]); // prettier-ignore
    const minus = rail('minus', [[42, 10], [62, 10], [62, 52], [30, 52]]); // prettier-ignore
    expect(told([plus, minus])).toEqual(['tight']);
    expect(told([])).toContain('gap');
  });

  it('narrow-neck under a third of the width', () => {
    const torn = (left: number) => [
      clear(59, 29.2, 62 - left / 2, 30.8),
      clear(62 + left / 2, 29.2, 65, 30.8),
    ];
    const neck = findings([...sound, ...torn(1)]).findings.find(({ kind }) => kind === 'narrow-neck')!;
    expect(neck.sizeMm).toBeCloseTo(1, 0);
    expect(kinds([...sound, ...torn(3)])).not.toContain('narrow-neck');
  });

  it('narrow-neck where a strip tapers to a thread that is lost, none where it is cut straight', () => {
    const parted = clear(59, 29.9, 65, 30.1);
    const nick = (from: number, to: number): Laid => {
      const ring: [number, number][] = [
        [from, 28],
        [to, 29.9],
        [to, 30.1],
        [from, 32],
      ];
      return { paper: 'ring', ring };
    };
    const tapered = [...sound, nick(59, 61.6), nick(65, 62.4), parted];
    const neck = findings(tapered).findings.find(({ kind }) => kind === 'narrow-neck')!;
    expect(neck.sizeMm).toBeLessThan(2);
    expect(Math.hypot(neck.at[0] - 62, neck.at[1] - 30)).toBeLessThan(1);
    expect(kinds(tapered)).toContain('gap');
    expect(kinds([...sound, parted])).not.toContain('narrow-neck');
  });

  it('loose-end where a strip leads to nothing', () => {
    const { findings: said } = findings([...sound, strip(4, [62, 30], [48, 30])]);
    const loose = said.find(({ kind, at }) => kind === 'loose-end' && Math.abs(at[0] - 48) < 1);
    expect(loose).toBeDefined();
  });

  it('near-edge within the trim', () => {
    const { findings: said } = findings([...sound, { copper: 'ring', ring: rectangle(20, 66, 40, 69.4) }]);
    const near = said.find(({ kind }) => kind === 'near-edge')!;
    expect(near.sizeMm).toBeCloseTo(0.6, 1);
  });
});

describe('what the maker has checked', () => {
  it('keeps the finding with its note, and the verdict no longer holds', () => {
    const cut = clear(59, 29.4, 65, 30.6);
    const checked = [{ kind: 'gap' as const, at: [62, 30] as [number, number], note: 'metered' }];
    const { findings: said } = findings([...sound, cut], { checked });
    expect(said.find(({ kind }) => kind === 'gap')!.checked).toEqual({ note: 'metered' });
    expect(verdictOf(said)).toBe('clear');
  });
});
