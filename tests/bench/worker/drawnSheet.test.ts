import { expect, test } from 'vitest';
import { drawnSheet } from '../../../src/bench/worker/drawnSheet.ts';
import { check } from '../../../src/check/index.ts';

test('the sheet on which the worker warms itself takes the check through all its stages', async () => {
  const { photo, card } = drawnSheet();
  const { outline, seen, traced, netlist, power } = await check(photo, card);
  const truth = [12, 64, 74].map((mm) => mm * 15);
  const corners = [
    [truth[0], truth[0]],
    [truth[1], truth[0]],
    [truth[1], truth[2]],
    [truth[0], truth[2]],
  ];
  outline.cornersPx.forEach(([x, y], n) =>
    expect(Math.hypot(x - corners[n][0], y - corners[n][1])).toBeLessThan(4),
  );
  expect(seen.by).toBe('learned');
  // Three strips are cut through.
  expect(traced.pieces).toHaveLength(6);
  expect(netlist.findings.filter(({ kind }) => kind === 'gap')).toHaveLength(3);
  expect(power.states.length).toBeGreaterThan(1);
});
