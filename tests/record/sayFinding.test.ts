import { describe, expect, it } from 'vitest';
import { findingKinds } from '../../src/card/index.ts';
import type { Finding } from '../../src/net/index.ts';
import { sayFinding } from '../../src/record/sayFinding.ts';
import { measureIn } from '../../src/words/lengths.ts';

const finding = (kind: Finding['kind'], more: Partial<Finding> = {}): Finding => ({
  kind,
  at: [12, 34],
  sizeMm: 1.25,
  certainty: 0.9,
  weight: 'holds',
  lamps: ['L1'],
  nets: [],
  sheet: 'base',
  facts: {
    between: 'cell+',
    and: 'cell-',
    pad: '+',
    side: '-',
    of: 'C1',
    sides: 1,
    limit: 1,
    usual: 5,
    state: 'at rest',
    photo: 'Flap.jpg',
    by: 'fold',
  },
  ...more,
});

describe('every kind of finding', () => {
  it.each(findingKinds)('%s says what is wrong, what to do and what settles it', (kind) => {
    for (const text of Object.values(sayFinding(finding(kind)))) {
      expect(text).toMatch(/^[A-Z].*\.$/);
      expect(text).not.toMatch(/undefined|NaN|\[object/);
    }
  });

  it('says under 0.5 that it is not sure', () => {
    const sure = sayFinding(finding('gap')).say;
    expect(sayFinding(finding('gap', { certainty: 0.3 })).say).not.toBe(sure);
    expect(sayFinding(finding('tight', { certainty: 0.3 })).say).toMatch(/not sure/);
  });

  it('writes lengths in the chosen unit', () => {
    measureIn('inch');
    expect(sayFinding(finding('tight')).say).toContain('0.05 in');
    measureIn('mm');
  });
});
