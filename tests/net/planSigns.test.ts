import { describe, expect, it } from 'vitest';
import { cardFrom } from '../../src/card/index.ts';
import { planSigns } from '../../src/net/planSigns.ts';

/** Two rails with three lamps across, as makers lay them (common practice, no source). */
const card = (turned: number) =>
  cardFrom(
    {
      format: 'foilproof/1',
      base: { width_mm: 74, height_mm: 70 },
      lamps: [20, 35, 50].map((x, n) => {
        const [upper, lower]: [number, number][] = [[x, 10], [x, 20]]; // prettier-ignore
        return n < turned
          ? { id: `L${n + 1}`, plus: lower, minus: upper }
          : { id: `L${n + 1}`, plus: upper, minus: lower };
      }),
      plan: {
        strips: [
          { id: 'a', net: 'A', width_mm: 5, path: [[5, 10], [70, 10]] }, // prettier-ignore
          { id: 'b', net: 'B', width_mm: 5, path: [[5, 20], [70, 20]] }, // prettier-ignore
        ],
      },
    },
    'drawn',
  );

describe('Which face of the cell a planned net leads to', () => {
  it('is told by the lamps on it, and at its places', () => {
    const { ofNet, at } = planSigns(card(0));
    expect([ofNet('A'), ofNet('B')]).toEqual(['+', '-']);
    expect([at([60, 11]), at([8, 21]), at([30, 40])]).toEqual(['+', '-', undefined]);
  });

  it('is left open where the lamps do not agree', () => {
    expect(planSigns(card(1)).ofNet('A')).toBeUndefined();
    expect(planSigns(card(3)).ofNet('A')).toBe('-');
  });
});
