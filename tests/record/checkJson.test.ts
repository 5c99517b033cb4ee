import { expect, it } from 'vitest';
import { z } from 'zod';
import { solveStates } from '../../src/power/index.ts';
import { checkJson } from '../../src/record/index.ts';
import { harbour, someFindings } from './harbour.ts';

/** What scripts rely on, written down on its own: keys, types and ranges of one printed object. */
const number = z.number().finite();
const contract = z.object({
  photo: z.string(),
  verdict: z.enum(['clear', 'clear-once-checked', 'hold']),
  base: z.object({ width_mm: number, height_mm: number }),
  corners_px: z.array(z.tuple([number, number])).length(4),
  findings: z.array(
    z.object({
      kind: z.string(),
      x_mm: number,
      y_mm: number,
      size_mm: number.optional(),
      certainty: number.min(0).max(1),
      lamps: z.array(z.string()),
      nets: z.array(z.string()),
      say: z.string().min(10),
      do: z.string(),
    }),
  ),
  nets: z.array(
    z.object({ id: z.string(), pieces: z.array(number), pads: z.array(z.string()), area_mm2: number }),
  ),
  states: z.array(
    z.object({
      name: z.string(),
      closed: z.array(z.string()),
      lamps: z.record(z.string(), z.object({ lit: z.boolean(), mA: number })),
    }),
  ),
  not_seen: z.array(z.string()),
  timings_ms: z.record(z.string(), number),
});

it('prints every key of the contract, and survives a trip through text', () => {
  const { checked, card } = harbour(someFindings);
  const printed: unknown = JSON.parse(
    JSON.stringify(checkJson(checked, solveStates(checked.netlist, checked.traced, card))),
  );
  const read = contract.parse(printed);
  expect(read.verdict).toBe('hold');
  expect(read.findings[0]).toMatchObject({
    kind: 'gap',
    x_mm: 41.2,
    y_mm: 80,
    size_mm: 0.8,
    certainty: 0.97,
    lamps: ['B3'],
  });
  expect(read.findings[1]).not.toHaveProperty('size_mm');
  expect(read.states.map(({ name }) => name)).toContain('stroke 3');
});

it('tells which lamps are lit in which state', () => {
  const { checked, card } = harbour();
  const { states } = checkJson(checked, solveStates(checked.netlist, checked.traced, card));
  const lit = (name: string) => {
    const lamps = states.find((state) => state.name === name)?.lamps ?? {};
    return Object.keys(lamps).filter((id) => lamps[id]?.lit);
  };
  expect(lit('at rest')).toEqual([]);
  expect(lit('cell pressed')).toEqual(['W1', 'W2', 'W3']);
  expect(lit('stroke 2')).toEqual(['B2', 'W1', 'W2', 'W3']);
});
