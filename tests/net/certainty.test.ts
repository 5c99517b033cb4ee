import { describe, expect, it } from 'vitest';
import { findingKinds } from '../../src/card/index.ts';
import { certain, certaintyBy, logOdds, type Finding } from '../../src/net/index.ts';
import { fitted } from '../../src/net/certainty/fitted.ts';
import { reliabilityTable } from './fit/reliabilityTable.ts';
import { certaintyOf, fitCurves } from './fit/fitCurves.ts';
import type { Example } from './fit/examples.ts';

const finding = (more: Partial<Finding>): Finding => ({
  kind: 'gap',
  at: [0, 0],
  certainty: 0.9,
  weight: 'holds',
  lamps: [],
  nets: [],
  sheet: 'base',
  facts: {},
  ...more,
});
const gap = (by: string, value: number, unsure = false) =>
  certain(finding({ evidence: { by, value }, certainty: value, facts: { unsure } }));

describe('the certainty of a finding', () => {
  it('rises with its evidence, in every class', () => {
    for (const curve of Object.values(fitted)) {
      const said = [0.05, 0.3, 0.5, 0.8, 0.95].map((value) => certaintyBy(curve, value));
      said.slice(1).forEach((v, k) => expect(v).toBeGreaterThan(said[k]));
      expect(Math.max(...said)).toBeLessThanOrEqual(0.99);
    }
  });

  it('holds the verdict for a gap that is seen plainly, and never for one that the picture leaves open', () => {
    for (const by of ['cut', 'facing', 'plan']) {
      const plainly = gap(by, 0.97);
      expect(plainly.weight).toBe('holds');
      expect(plainly.certainty).toBeGreaterThan(0.7);
    }
    for (const by of ['unsure', 'fine']) {
      const open = gap(by, 0.49, true);
      expect(open.weight).toBe('check');
      expect(open.certainty).toBeLessThan(0.5);
    }
  });

  it('is the same when it is weighed twice, and keeps what it was made of', () => {
    const once = gap('cut', 0.7);
    expect(certain(once)).toEqual(once);
    expect(once.evidence).toEqual({ by: 'cut', value: 0.7 });
  });

  it('is fitted for kinds that the card knows', () => {
    for (const name of Object.keys(fitted)) expect(findingKinds).toContain(name.split('/')[0]);
  });
});

describe('fitting', () => {
  const examples = (said: number, right: number, of: number): Example[] =>
    Array.from({ length: of }, (_, n) => ({
      photo: `p${n}`,
      kind: 'seam',
      by: '',
      evidence: said,
      certainty: said,
      right: n < right,
      weight: 1,
    }));

  it('makes many findings as certain as they were right', () => {
    const some = [...examples(0.9, 60, 100), ...examples(0.5, 20, 100)];
    const curves = fitCurves(some);
    expect(certaintyOf(curves, some[0])).toBeCloseTo(0.6, 1);
    expect(certaintyOf(curves, some[150])).toBeCloseTo(0.2, 1);
  });

  it('moves little on few examples', () => {
    const [one] = examples(0.9, 1, 1);
    expect(certaintyOf(fitCurves(examples(0.9, 1, 2)), one)).toBeGreaterThan(0.6);
    expect(certaintyOf(fitCurves(examples(0.9, 1, 60)), one)).toBeLessThan(0.15);
  });

  it('leaves a kind alone of which no photograph had one', () => {
    const [one] = examples(0.9, 0, 1);
    expect(certaintyOf(fitCurves(examples(0.9, 0, 20)), one)).toBe(0.9);
  });

  it('log-odds are the inverse of the logistic function', () => {
    for (const p of [0.02, 0.3, 0.5, 0.9])
      expect(certaintyBy({ shift: 0, slope: 1 }, p)).toBeCloseTo(1 / (1 + Math.exp(-logOdds(p))), 12);
  });

  it('a table of reliability weighs the bins by what is in them', () => {
    const table = reliabilityTable(examples(0.85, 3, 4), ({ evidence }) => evidence);
    expect(table).toContain('said 0.85  right 0.75  (4)');
    expect(table).toContain('mean gap 0.100');
  });
});
