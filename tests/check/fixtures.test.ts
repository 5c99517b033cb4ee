import { describe, expect, it } from 'vitest';
import { entries, judge } from './fixtureCases.ts';

const false_: string[] = [];

describe('Every fixture gives the planted faults', () => {
  it.each(entries)('%s', async (name, entry) => {
    const { checked, missed, falsely } = await judge(entry);
    const planted = entry.build.planted.filter((p) => p.kind !== 'tight' && p.kind !== 'narrow-neck');
    false_.push(...falsely.map((f) => `${name}: ${f.kind} at ${f.at.map((v) => v.toFixed(1)).join(', ')}`));
    expect(missed).toEqual([]);
    expect(checked.outline.certainty).toBeGreaterThanOrEqual(0.5);
    if (planted.length > 0) expect(checked.verdict).toBe('hold');
  });

  it('at most one false holding finding in ten photographs', () => {
    expect(false_.length, false_.join('; ')).toBeLessThanOrEqual(Math.floor(entries.length / 10));
  });
});
