import { expect, it } from 'vitest';
import { cardSchema, type Card } from '../../../src/card/index.ts';
import { planChecks } from '../../../src/plan/index.ts';
import { addStrip } from '../../../src/bench/plan/planEdits.ts';
import { foldedCases } from '../../generate/folded.ts';
import { harbourNight } from '../../generate/harbourNight.ts';

/** Harbour Night with its copper planned, but for the strips on the flap, which is hinged at y = 148 mm. */
function planned(): Card {
  const folded = cardSchema.parse(foldedCases().find(({ name }) => name === 'sound')!.card);
  const { plan, patches, cell } = cardSchema.parse(harbourNight().card);
  return { ...folded, photos: [], patches, cell, plan: { ...plan!, holes: [], foam: folded.plan!.foam } };
}

/** Draws the flap's strips as the page does; @param off the third lies so far from where its partner meets it, mm */
function withFlap(off: number): Card {
  const paths: [number, number][][] = [20, 32, 44, 56, 68].map((x, k) => {
    const up = k === 2 ? off : 0;
    // Closing mirrors about y = 148: the opening between y = 110 and y = 113.5 lies under 182.5 to 186.
    return [
      [x, 179 - up],
      [x, 189.5 - up],
    ];
  });
  return paths.reduce((card, path) => addStrip(card, { net: 'flap', width_mm: 4, path }).card, planned());
}

const missed = (card: Card) => planChecks(card).findings.filter(({ facts }) => facts?.flap === 'F1');

it('a strip drawn over a flap lies on its underside, and lands there when the flap closes', () => {
  const card = withFlap(0);
  const drawn = card.plan!.strips.filter(({ net }) => net === 'flap');
  expect(drawn.map(({ on }) => on)).toEqual(['F1', 'F1', 'F1', 'F1', 'F1']);
  expect(missed(card)).toEqual([]);
  const step = planChecks(card).power.states.find(({ name }) => name === 'stroke 3')!;
  expect(Object.keys(step.lamps).filter((id) => id.startsWith('B') && step.lamps[id].lit)).toEqual(['B3']);
});

it('is told to miss its partner by as much as it is drawn beside it', () => {
  // 3.5 mm of overlap and 1.5 mm beyond.
  const [miss, ...more] = missed(withFlap(5));
  expect(more).toEqual([]);
  expect(miss.facts).toMatchObject({ of: 'C3', direction: 'below' });
  expect(Math.abs(miss.sizeMm! - 1.5)).toBeLessThan(0.25);
});
