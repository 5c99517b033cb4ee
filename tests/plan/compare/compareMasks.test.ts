import { describe, expect, it } from 'vitest';
import type { MaskFaultKind } from '../../../src/plan/compare/index.ts';
import { compareMasks } from '../../../src/plan/compare/index.ts';
import { drawPair } from './drawPair.ts';

const kinds: MaskFaultKind[] = ['open', 'short', 'nibble', 'spur', 'stray', 'pin-hole'];
const turned = (by: number) => kinds.map((_, k) => kinds[(k + by) % kinds.length]);

describe('a build that is moved, bent and otherwise sound', () => {
  it.each([1, 2, 3, 4, 5])('has no fault (pair %i)', (seed) => {
    const { built, plan } = drawPair(seed, []);
    expect(compareMasks(built, plan).faults).toEqual([]);
  });

  it('tells the move', () => {
    const { plan } = drawPair(1, []);
    const on = new Uint8Array(plan.on.length);
    for (let y = 0; y < plan.height - 14; y++) {
      on.set(plan.on.subarray((y + 14) * plan.width + 8, (y + 15) * plan.width), y * plan.width);
    }
    const { shift } = compareMasks({ ...plan, on }, plan);
    expect(Math.abs(shift.dx - 8) + Math.abs(shift.dy - 14)).toBeLessThanOrEqual(2);
  });
});

describe('a build with six planted faults', () => {
  it.each([11, 12, 13, 14, 15, 16])('gives those and no other, each at its place (pair %i)', (seed) => {
    const { built, plan, faults } = drawPair(seed, turned(seed));
    const found = compareMasks(built, plan).faults;
    expect(found.map((f) => f.kind).sort()).toEqual(faults.map((f) => f.kind).sort());
    for (const fault of faults) {
      const near = found.find((f) => f.kind === fault.kind)!;
      const tall = fault.kind === 'short' ? 40 : 14;
      expect(Math.abs(near.at.x - fault.x), fault.kind).toBeLessThan(14);
      expect(Math.abs(near.at.y - fault.y), fault.kind).toBeLessThan(tall);
    }
  });

  it('says which of them change a net', () => {
    const { built, plan } = drawPair(21, turned(0));
    const changing = compareMasks(built, plan).faults.filter((f) => f.changesNet);
    expect(changing.map((f) => f.kind).sort()).toEqual(['open', 'short']);
  });

  it('turns opens into shorts when the colours are swapped', () => {
    const { built, plan } = drawPair(22, ['open']);
    const swapped = (b: typeof built) => ({ ...b, on: b.on.map((v) => 1 - v) });
    expect(compareMasks(swapped(built), swapped(plan)).faults.map((f) => f.kind)).toEqual(['short']);
  });
});

it('reports a planned part that is not there at all as missing', () => {
  const { plan } = drawPair(1, []);
  const on = plan.on.slice();
  on.fill(0, 0, 100 * plan.width);
  const { faults } = compareMasks({ ...plan, on }, plan);
  expect(faults.map((f) => f.kind)).toEqual(['missing']);
  expect(faults[0].changesNet).toBe(true);
});
