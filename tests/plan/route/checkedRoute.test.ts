import { expect, it } from 'vitest';
import type { Card } from '../../../src/card/index.ts';
import { buildNetlist } from '../../../src/net/index.ts';
import { suggestRoute } from '../../../src/plan/route/index.ts';
import { laid } from '../built/layCard.ts';
import { randomCard } from './randomCard.ts';

it.each([1, 2, 3, 5, 6, 7, 9, 10, 11, 13])(
  'a card laid as suggested is held for nothing by the checker itself (card %i)',
  (seed) => {
    const card = randomCard(seed);
    const { strips } = suggestRoute(card);
    const [x, y] = strips.find(({ net }) => net === 'plus')!.path[0];
    const declared: Card = { ...card, cell: { ...card.cell!, upper_contact: [x, y] } };
    const traced = laid(
      card,
      strips.map(({ path, width_mm }) => ({ path, widthMm: width_mm })),
    );
    const { findings } = buildNetlist(traced, declared);
    expect(
      findings.filter(({ kind, weight }) => weight === 'holds' || kind === 'tight' || kind === 'near-edge'),
    ).toEqual([]);
  },
);
