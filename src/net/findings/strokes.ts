import { contactPlace } from '../../parts/index.ts';
import type { Case } from '../case.ts';
import { between, distance } from '../distance.ts';
import { standings } from '../flow.ts';
import type { Finding } from '../types.ts';

/**
 * Contacts of a stroke that a finger does not meet in their order. The finger runs between the two contacts that lie
 * farthest apart; either way along it will do.
 */
export function strokesOutOfOrder({ card }: Case): Finding[] {
  const strokes = card.contacts
    .filter(({ how, order }) => how === 'stroke' && order !== undefined)
    .sort((a, b) => a.order! - b.order!);
  if (strokes.length < 3) return [];
  const places = strokes.map((contact) => contactPlace(contact));
  let [from, to] = [places[0], places[1]];
  for (const p of places)
    for (const q of places) if (distance(p, q) > distance(from, to)) [from, to] = [p, q];
  const along = places.map(
    (p) => (p[0] - from[0]) * (to[0] - from[0]) + (p[1] - from[1]) * (to[1] - from[1]),
  );
  const rank = along.map((each) => along.filter((other) => other < each).length);
  const last = strokes.length - 1;
  const wrong = [rank, rank.map((r) => last - r)]
    .map((ranks) => ranks.flatMap((r, k) => (r === k ? [] : [k])))
    .reduce((a, b) => (b.length < a.length ? b : a));
  if (wrong.length === 0) return [];
  const [k] = wrong;
  return [
    {
      kind: 'missed-contact',
      at: places[k],
      certainty: 0.9,
      weight: 'holds',
      lamps: [],
      nets: [],
      sheet: 'base',
      facts: {
        of: strokes[k].id,
        order: strokes[k].order!,
        among: wrong.map((w) => strokes[w].id).join(', '),
      },
    },
  ];
}

/** Lamps that a step lights though they wait for another: wrong order, or two at once. */
export function litByAnother({ card, states, wiring }: Case): Finding[] {
  return card.lamps.flatMap((lamp): Finding[] => {
    const intent = lamp.intent;
    if (typeof intent !== 'object') return [];
    const step = states.find(
      (state) =>
        !state.closed.includes(intent.contact) &&
        state.closed.some((id) => id !== 'cell') &&
        standings(card, state, wiring.netOf).get(lamp.id) === 'fed',
    );
    if (!step) return [];
    return [
      {
        kind: 'lit-at-rest',
        at: between(lamp.plus, lamp.minus),
        certainty: 0.9,
        weight: 'holds',
        lamps: [lamp.id],
        nets: [],
        sheet: 'base',
        facts: { state: step.name, contact: intent.contact, another: true },
      },
    ];
  });
}
