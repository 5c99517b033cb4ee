import type { Lamp } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { blindBeside } from '../blindBeside.ts';
import { padOf, type Case } from '../case.ts';
import { between, distance } from '../distance.ts';
import { sheetAt } from '../covered.ts';
import { pieceAt } from '../../parts/index.ts';
import { isStrange } from '../../trace/index.ts';
import { fedSomewhere } from '../fed.ts';
import { standings } from '../flow.ts';
import { lackingSide } from '../lacking.ts';
import type { Finding } from '../types.ts';

function at(found: Case, lamps: Lamp[], place: Point = between(lamps[0].plus, lamps[0].minus)) {
  const { netOf } = found.wiring;
  const nets = lamps.flatMap(({ id }) => [netOf[`${id}+`], netOf[`${id}-`]]);
  return {
    at: place,
    lamps: lamps.map(({ id }) => id),
    nets: [...new Set(nets.filter((net) => net !== undefined))],
    sheet: sheetAt(found.card, place),
    weight: 'holds' as const,
  };
}

/** Where the photograph does not show it, copper may lie there all the same. */
const unseen = { certainty: 0.45, weight: 'check' as const };

/** Lamps whose pad hangs over paper. */
export function lampsOffStrip(found: Case): Finding[] {
  return found.card.lamps.flatMap((lamp) => {
    const off = [padOf(found, `${lamp.id}+`), padOf(found, `${lamp.id}-`)]
      .flatMap((pad) => (pad && pad.piece === 0 ? [pad] : []))
      .filter((pad) => !stillToLay(found, pad.at));
    if (off.length === 0) return [];
    const worst = off.reduce((a, b) => (b.mm > a.mm ? b : a));
    return [
      {
        kind: 'lamp-off-strip' as const,
        ...at(found, [lamp], off.length === 2 ? undefined : worst.at),
        ...(Number.isFinite(worst.mm) ? { sizeMm: worst.mm } : {}),
        ...(off.some((pad) => isUnseenPad(found, pad.at)) ? unseen : { certainty: worst.certainty }),
        facts: { pad: off.length === 2 ? 'both' : worst.pad.slice(-1) },
      },
    ];
  });
}

/** Rings round a pad, mm, and places on each, that show whether paper lies there. */
const ringsMm = [2.5, 4, 5.5];
const onRing = 8;
/** A finger is so wide, mm, that only from farther round most is paper. */
const paperMm = 20;
/** The lamp itself takes a quarter of what is not copper; of more that is no paper something lies over the sheet. */
const mostStrange = 0.4;

/** Whether the photograph leaves open what a pad rests on: burnt out, or a finger or a wire lies over it. */
function isUnseenPad({ traced }: Case, [x, y]: Point): boolean {
  if (blindBeside(traced, [x, y])) return true;
  const round = ringsMm.flatMap((mm) =>
    Array.from({ length: onRing }, (_, n): Point => {
      const turn = (n / onRing) * 2 * Math.PI;
      return [x + mm * Math.cos(turn), y + mm * Math.sin(turn)];
    }),
  );
  const open = round.filter((p) => pieceAt(traced, p) === 0);
  return open.filter((p) => isStrange(traced, p, paperMm)).length > mostStrange * open.length;
}

/** A planned strip that is not laid yet leaves its lamps without copper: that is no fault of the lamp. */
function stillToLay({ laid }: Case, pad: Point): boolean {
  return laid.some((each) => !each.laid && each.places.some((p) => distance(p, pad) < 4));
}

/**
 * Lamps that stand against the current: fed from the wrong side in some state, or against their fellows on the same nets.
 *
 * @param joined whether nets run into each other, so that sides say nothing
 */
export function reversedLamps(found: Case, joined: boolean): Finding[] {
  const { card, states, wiring } = found;
  const against = new Set<string>();
  for (const state of states) {
    for (const [id, standing] of standings(card, state, wiring.netOf)) {
      if (standing === 'against') against.add(id);
    }
  }
  const fed = fedSomewhere(found);
  const sure = card.lamps.filter(({ id }) => against.has(id) && !fed.has(id));
  if (sure.length > 1 && fed.size === 0 && card.cell) {
    const whole = { ...at(found, sure, card.cell.at), facts: { cell: true } };
    return [{ kind: 'reversed-lamp', certainty: 0.9, ...whole }];
  }
  const sides = joined ? new Set<string>() : againstFellows(found);
  return card.lamps
    .filter((lamp) => !fed.has(lamp.id) && (sure.includes(lamp) || sides.has(lamp.id)))
    .map((lamp) => ({
      kind: 'reversed-lamp' as const,
      ...at(found, [lamp]),
      certainty: sure.includes(lamp) ? 0.97 : 0.8,
      facts: {},
    }));
}

/**
 * Where no state feeds a lamp (an open contact, no cell yet), its side is told from the others: a net that the cell's
 * plus or most lamps' + pads rest on is a plus net. Two fellows at least must speak.
 */
function againstFellows({ card, wiring: { netOf } }: Case): Set<string> {
  const vote = new Map<string, number>();
  const add = (net: string | undefined, n: number) => net && vote.set(net, (vote.get(net) ?? 0) + n);
  add(netOf['cell+'], 100);
  add(netOf['cell-'], -100);
  for (const { id } of card.lamps) {
    add(netOf[`${id}+`], 1);
    add(netOf[`${id}-`], -1);
  }
  const out = new Set<string>();
  for (const { id } of card.lamps) {
    const [p, n] = [netOf[`${id}+`], netOf[`${id}-`]];
    if (!p || !n || p === n) continue;
    // Its own vote is taken out.
    if ((vote.get(p) ?? 0) - 1 <= -2 || (vote.get(n) ?? 0) + 1 >= 2) out.add(id);
  }
  return out;
}

/**
 * Lamps that no state lights though nothing else accounts for it, those that lack the same net told as one.
 *
 * @param explained lamps that another finding already names
 * @param open nets along which the picture leaves a break open: a lamp on one may be fed all the same
 */
export function unfedLamps(
  found: Case,
  explained: ReadonlySet<string>,
  open: ReadonlySet<string>,
): Finding[] {
  const { card, states, wiring } = found;
  const { netOf } = wiring;
  const known = netOf['cell+'] !== undefined && netOf['cell-'] !== undefined;
  if (!card.cell || !known || states.some(({ shorted }) => shorted)) return [];
  const fed = fedSomewhere(found);
  const groups = new Map<string, Lamp[]>();
  for (const lamp of card.lamps) {
    if (fed.has(lamp.id) || explained.has(lamp.id)) continue;
    const side = lackingSide(found, lamp);
    const key = side === 'both' ? lamp.id : `${netOf[`${lamp.id}${side}`]}`;
    groups.set(key, [...(groups.get(key) ?? []), lamp]);
  }
  const doubted = (lamp: Lamp) =>
    open.has(netOf[`${lamp.id}+`]) || open.has(netOf[`${lamp.id}-`]) || dazzled(found, lamp);
  return [...groups.values()].map((lamps) => ({
    kind: 'unfed-lamp' as const,
    ...at(found, lamps),
    ...(lamps.some(doubted) ? unseen : { certainty: 0.9 }),
    facts: { side: lackingSide(found, lamps[0]) },
  }));
}

/** Whether the strip is burnt out or black where it leaves the pad that lacks its net: it may lead on there. */
function dazzled(found: Case, lamp: Lamp): boolean {
  const side = lackingSide(found, lamp);
  const pads = side === 'both' ? [lamp.plus, lamp.minus] : [side === '+' ? lamp.plus : lamp.minus];
  return pads.some((pad) => blindBeside(found.traced, pad));
}

/** Lamps that light before their own contact closes. */
export function litTooSoon(found: Case): Finding[] {
  const { card, states, wiring } = found;
  return card.lamps.flatMap((lamp) => {
    const contact = typeof lamp.intent === 'object' ? lamp.intent.contact : undefined;
    const early = states.find(
      (state) =>
        (state.name === 'at rest' || state.closed.every((id) => id === 'cell')) &&
        (contact !== undefined || !state.closed.includes('cell')) &&
        standings(card, state, wiring.netOf).get(lamp.id) === 'fed',
    );
    if (!early) return [];
    return [
      {
        kind: 'lit-at-rest' as const,
        ...at(found, [lamp]),
        certainty: 0.9,
        facts: { state: early.name, contact: contact ?? '' },
      },
    ];
  });
}
