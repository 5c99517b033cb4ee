import { beforeAll, describe, expect, it } from 'vitest';
import { cardFrom } from '../../src/card/index.ts';
import { buildNetlist, verdictOf, type Finding } from '../../src/net/index.ts';
import type { Traced } from '../../src/trace/index.ts';
import { catalogue } from '../generate/catalogue.ts';
import { traceBuild } from './laidBuild.ts';

/** Kinds that a comparison with the plan tells, not the nets. */
const ofThePlan = ['missing-strip'];

const graver = ({ kind, weight, certainty }: Finding) =>
  weight === 'holds' && certainty >= 0.5 && kind !== 'missed-contact';

/**
 * Every build of the demo card, its copper drawn from the generator's geometry and traced: the planted faults and only
 * those, with and without the plan.
 */
describe.each(catalogue().map((entry) => [entry.name, entry] as const))('%s', (_, entry) => {
  let traced: Traced;
  beforeAll(() => {
    traced = traceBuild(entry.build);
  });
  const planted = entry.build.planted.filter(({ kind }) => !ofThePlan.includes(kind));

  it.each([true, false])('gives the planted faults and only those (plan: %s)', (withPlan) => {
    const card = cardFrom(entry.build.card, entry.name);
    // Without its plan nobody can know of strips that are still to lay.
    if (!withPlan && planted.length < entry.build.planted.length) return;
    const { findings } = buildNetlist(traced, withPlan ? card : { ...card, plan: undefined });
    for (const { kind, at, lamp } of planted) {
      const hit = findings.find(
        (f) => f.kind === kind && Math.hypot(f.at[0] - at[0], f.at[1] - at[1]) <= 3 + (lamp ? 2 : 0),
      );
      expect(hit, `${kind} at ${at}`).toBeDefined();
      if (lamp) expect(hit!.lamps).toEqual([lamp]);
    }
    const holding = findings.filter(graver).map(({ kind }) => kind);
    const expected = planted
      .map(({ kind }) => kind)
      .filter((kind) => kind !== 'tight' && kind !== 'narrow-neck');
    expect([...holding].sort()).toEqual([...expected].sort());
  });

  it('has the verdict that follows', () => {
    const { findings } = buildNetlist(traced, cardFrom(entry.build.card, entry.name));
    const holds = findings.some(({ weight, certainty }) => weight === 'holds' && certainty >= 0.5);
    expect(verdictOf(findings)).toBe(holds ? 'hold' : 'clear-once-checked');
  });
});
