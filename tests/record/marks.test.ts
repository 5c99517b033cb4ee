import { expect, it } from 'vitest';
import type { Finding } from '../../src/net/index.ts';
import { seeded } from '../../src/power/random.ts';
import { placeMarks } from '../../src/record/drawing/placeMarks.ts';

const sheet = { x0: 0, y0: 0, x1: 105, y1: 148 };

function scattered(count: number, seed: number): Finding[] {
  const random = seeded(seed);
  return Array.from({ length: count }, (): Finding => ({
    kind: 'seam',
    at: [random() * 105, random() * 148],
    certainty: 0.5,
    weight: random() < 0.3 ? 'holds' : 'check',
    lamps: [],
    nets: [],
    sheet: 'base',
    facts: {},
  }));
}

it('numbers every finding once, in order, and keeps numbers apart and off the sheet', () => {
  for (let seed = 1; seed <= 100; seed++) {
    const marks = placeMarks(scattered(seed % 40, seed), sheet);
    expect(marks.map(({ number }) => number)).toEqual(marks.map((_, i) => i + 1));
    const labels = marks.flatMap(({ label, radius }) => (label ? [{ label, radius }] : []));
    for (const { label } of labels) {
      expect(label[0] < 0 || label[0] > 105).toBe(true);
      expect(label[1]).toBeGreaterThan(0);
      expect(label[1]).toBeLessThan(148);
    }
    labels.forEach((a, i) =>
      labels.slice(i + 1).forEach((b) => {
        const apart = Math.hypot(a.label[0] - b.label[0], a.label[1] - b.label[1]);
        expect(apart).toBeGreaterThan(a.radius + b.radius);
      }),
    );
  }
});

it('gives the leaders to what holds when the margin is full', () => {
  const marks = placeMarks(scattered(120, 5), sheet);
  const without = marks.filter(({ label }) => !label);
  expect(without.length).toBeGreaterThan(0);
  const holding = marks.filter(({ finding }) => finding.weight === 'holds');
  expect(holding.filter(({ label }) => !label).length).toBeLessThanOrEqual(Math.max(0, holding.length - 26));
});
