import type { Point } from '../../geometry/index.ts';
import { padOf, type Case } from '../case.ts';
import { standings } from '../flow.ts';
import { laidStrips } from '../planned.ts';
import type { Finding } from '../types.ts';
import { fedSomewhere } from './gaps.ts';

/** Lamps whose pad hangs over paper. */
export function lampsOffStrip(found: Case): Finding[] {
  return found.card.lamps.flatMap(({ id, plus, minus }) => {
    const off = [padOf(found, `${id}+`), padOf(found, `${id}-`)].filter((pad) => pad && pad.piece === 0);
    const yet = off.filter((pad) => pad && !stillToLay(found, pad.at));
    if (yet.length === 0) return [];
    const worst = yet.reduce((a, b) => (b!.mm > a!.mm ? b : a))!;
    const place: Point = yet.length === 2 ? [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2] : worst.at;
    return [
      {
        kind: 'lamp-off-strip' as const,
        at: place,
        ...(Number.isFinite(worst.mm) ? { sizeMm: worst.mm } : {}),
        certainty: worst.certainty,
        weight: 'holds' as const,
        lamps: [id],
        nets: [],
        sheet: 'base',
        facts: { pad: yet.length === 2 ? 'both' : worst.pad.endsWith('+') ? '+' : '-' },
      },
    ];
  });
}

/** A planned strip that is not laid yet leaves its lamps without copper: that is no fault of the lamp. */
function stillToLay(found: Case, at: Point): boolean {
  return laidStrips(found).some(
    ({ share, places }) => share < 0.3 && places.some((p) => Math.hypot(p[0] - at[0], p[1] - at[1]) < 4),
  );
}

/** Lamps that stand against the current: in the state that feeds them from the wrong side, or against all their fellows. */
export function reversedLamps(found: Case): Finding[] {
  const { card, states, wiring } = found;
  const against = new Set<string>();
  for (const state of states) {
    for (const [id, standing] of standings(card, state, wiring.netOf))
      if (standing === 'against') against.add(id);
  }
  const fed = fedSomewhere(found, states, wiring.netOf);
  const sure = [...against].filter((id) => !fed.has(id));
  const sides = sidesByFellows(found);
  const bySides = card.lamps
    .map(({ id }) => id)
    .filter((id) => sides.get(id) === 'against' && !sure.includes(id) && !fed.has(id));
  return [...sure.map((id) => reversed(found, id, 0.97)), ...bySides.map((id) => reversed(found, id, 0.8))];
}

function reversed({ card, wiring }: Case, id: string, certainty: number): Finding {
  const { plus, minus } = card.lamps.find((lamp) => lamp.id === id)!;
  return {
    kind: 'reversed-lamp',
    at: [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2],
    certainty,
    weight: 'holds',
    lamps: [id],
    nets: [wiring.netOf[`${id}+`], wiring.netOf[`${id}-`]].filter(Boolean),
    sheet: 'base',
    facts: {},
  };
}

/**
 * Where no state feeds a lamp (an open contact, no cell yet), its side is told from the others: a net that the cell's
 * plus or most lamps' + pads rest on is a plus net. A lamp with its - pad on a plus net, or its + pad on a minus net, stands against.
 */
function sidesByFellows({ card, wiring }: Case): Map<string, 'with' | 'against'> {
  const vote = new Map<string, number>();
  const add = (net: string | undefined, n: number) => net && vote.set(net, (vote.get(net) ?? 0) + n);
  add(wiring.netOf['cell+'], 100);
  add(wiring.netOf['cell-'], -100);
  for (const { id } of card.lamps) {
    add(wiring.netOf[`${id}+`], 1);
    add(wiring.netOf[`${id}-`], -1);
  }
  const out = new Map<string, 'with' | 'against'>();
  for (const { id } of card.lamps) {
    const [p, n] = [wiring.netOf[`${id}+`], wiring.netOf[`${id}-`]];
    if (!p || !n || p === n) continue;
    // Its own vote is taken out; two fellows at least must speak.
    const plus = (vote.get(p) ?? 0) - 1;
    const minus = (vote.get(n) ?? 0) + 1;
    if (plus <= -2 || minus >= 2) out.set(id, 'against');
    else out.set(id, 'with');
  }
  return out;
}

/**
 * Lamps that no state lights, the causes that other findings name left out.
 *
 * @param explained lamps that another finding already accounts for
 */
export function unfedLamps(found: Case, explained: ReadonlySet<string>): Finding[] {
  const { card, states, wiring } = found;
  if (!card.cell || states.some(({ shorted }) => shorted)) return [];
  const fed = fedSomewhere(found, states, wiring.netOf);
  return card.lamps
    .filter(({ id }) => !fed.has(id) && !explained.has(id))
    .map(({ id, plus, minus }) => ({
      kind: 'unfed-lamp' as const,
      at: [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2] as const,
      certainty: 0.9,
      weight: 'holds' as const,
      lamps: [id],
      nets: [wiring.netOf[`${id}+`], wiring.netOf[`${id}-`]].filter(Boolean),
      sheet: 'base',
      facts: { upper: wiring.netOf['cell+'] !== undefined && wiring.netOf['cell-'] !== undefined },
    }));
}

/** Lamps that light before they should: with nothing pressed, or with the cell pressed and their own contact open. */
export function litTooSoon(found: Case): Finding[] {
  const { card, states, wiring } = found;
  return card.lamps.flatMap((lamp) => {
    const state = states.find(({ closed }) => {
      const own = typeof lamp.intent === 'object' ? lamp.intent.contact : 'cell';
      return !closed.includes(own);
    });
    const early = states.filter(
      ({ name, closed }) =>
        name === 'at rest' || (typeof lamp.intent === 'object' && !closed.includes(lamp.intent.contact)),
    );
    const lit = early.find((each) => standings(card, each, wiring.netOf).get(lamp.id) === 'fed');
    if (!state || !lit) return [];
    return [
      {
        kind: 'lit-at-rest' as const,
        at: [(lamp.plus[0] + lamp.minus[0]) / 2, (lamp.plus[1] + lamp.minus[1]) / 2] as const,
        certainty: 0.9,
        weight: 'holds' as const,
        lamps: [lamp.id],
        nets: [],
        sheet: 'base',
        facts: { state: lit.name, contact: typeof lamp.intent === 'object' ? lamp.intent.contact : '' },
      },
    ];
  });
}
