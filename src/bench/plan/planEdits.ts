import type { Card, Flap, Patch, PlanStrip } from '../../card/index.ts';
import { insideRing, type Point } from '../../geometry/index.ts';
import type { OpenCrossing } from '../../plan/index.ts';
import { pair, removePart } from '../parts/partEdits.ts';
import type { Picked } from './picked.ts';

/** Changes of a card's plan; each gives a new card. */

type Plan = NonNullable<Card['plan']>;

const emptyPlan: Plan = { strips: [], holes: [], foam: [] };

export function stripsOf(card: Card): PlanStrip[] {
  return card.plan?.strips ?? [];
}

/** Names of nets to choose from: the two rails first. */
export function netsOf(card: Card): string[] {
  return [...new Set(['plus', 'minus', ...stripsOf(card).map(({ net }) => net)])];
}

/** Puts the strips in place of those before; what patches know of the ones beneath them follows. */
export function setStrips(card: Card, strips: PlanStrip[]): Card {
  const before = new Set(stripsOf(card).map(({ id }) => id));
  const now = new Map(strips.map((strip) => [strip.id, strip]));
  const patches = card.patches.map((patch) => ({
    ...patch,
    beneath: patch.beneath
      .filter(({ id }) => now.has(id) || !before.has(id))
      .map((each) => {
        const { width_mm, path } = now.get(each.id) ?? each;
        return { id: each.id, width_mm, path };
      }),
  }));
  return { ...card, patches, plan: { ...(card.plan ?? emptyPlan), strips } };
}

/** Adds a strip under the next free name, on the sheet over which it is drawn. */
export function addStrip(card: Card, strip: Omit<PlanStrip, 'id' | 'on'>): { card: Card; id: string } {
  const strips = stripsOf(card);
  const id = freeName('S', strips);
  return { card: setStrips(card, [...strips, { ...strip, id, on: sheetUnder(card, strip.path) }]), id };
}

/** The flap, opened flat, over which a path runs from end to end; else the base. */
function sheetUnder({ flaps }: Card, path: readonly Point[]): string {
  const middles = path.slice(1).map(([x, y], k): Point => [(x + path[k][0]) / 2, (y + path[k][1]) / 2]);
  return flaps.find(({ outline }) => middles.every((p) => insideRing(p, outline)))?.id ?? 'base';
}

export function changeStrip(card: Card, id: string, part: Partial<PlanStrip>): Card {
  return setStrips(
    card,
    stripsOf(card).map((strip) => (strip.id === id ? { ...strip, ...part } : strip)),
  );
}

/** A strip's order of laying is its place in the list. */
export function moveStrip(card: Card, id: string, by: 1 | -1): Card {
  const strips = [...stripsOf(card)];
  const from = strips.findIndex((strip) => strip.id === id);
  const to = from + by;
  if (from < 0 || to < 0 || to >= strips.length) return card;
  [strips[from], strips[to]] = [strips[to], strips[from]];
  return setStrips(card, strips);
}

export function moveCorner(card: Card, id: string, k: number, to: Point): Card {
  const strip = stripsOf(card).find((each) => each.id === id);
  if (!strip) return card;
  return changeStrip(card, id, { path: strip.path.map((p, i) => (i === k ? pair(to) : p)) });
}

/** Takes a corner out; a strip of two places goes as a whole. */
export function removeCorner(card: Card, id: string, k: number): Card {
  const strip = stripsOf(card).find((each) => each.id === id);
  if (!strip) return card;
  const path = strip.path.filter((_, i) => i !== k);
  return path.length < 2 ? removeStrip(card, id) : changeStrip(card, id, { path });
}

export function removeStrip(card: Card, id: string): Card {
  return setStrips(
    card,
    stripsOf(card).filter((strip) => strip.id !== id),
  );
}

/** Lays the patch that a crossing asks for. */
export function layPatch(card: Card, { patch }: OpenCrossing): Card {
  return addPatch(card, patch).card;
}

/** A patch; strips that it parts are told by the crossings under it. */
export function addPatch(
  card: Card,
  { outline, beneath }: Pick<Patch, 'outline' | 'beneath'>,
): { card: Card; id: string } {
  const id = freeName('K', card.patches);
  return { card: { ...card, patches: [...card.patches, { id, outline, strips: [], beneath }] }, id };
}

export function changePatch(card: Card, id: string, part: Partial<Patch>): Card {
  return { ...card, patches: card.patches.map((each) => (each.id === id ? { ...each, ...part } : each)) };
}

/** Whether a strip runs beneath a patch or over it. */
export function setBeneath(card: Card, id: string, strip: PlanStrip, beneath: boolean): Card {
  const patch = card.patches.find((each) => each.id === id);
  if (!patch) return card;
  const others = patch.beneath.filter((each) => each.id !== strip.id);
  const { width_mm, path } = strip;
  return changePatch(card, id, {
    beneath: beneath ? [...others, { id: strip.id, width_mm, path }] : others,
  });
}

export function addFlap(
  card: Card,
  { fold, outline }: Pick<Flap, 'fold' | 'outline'>,
): { card: Card; id: string } {
  const id = freeName('F', card.flaps);
  const use = card.flaps.some((flap) => flap.use === 'cell') ? ('press' as const) : ('cell' as const);
  return { card: { ...card, flaps: [...card.flaps, { id, fold, outline, strips: [], use }] }, id };
}

export function changeFlap(card: Card, id: string, part: Partial<Flap>): Card {
  return { ...card, flaps: card.flaps.map((each) => (each.id === id ? { ...each, ...part } : each)) };
}

/** Takes away whatever is picked. */
export function removePicked(card: Card, { kind, id, corner }: Picked): Card {
  if (kind === 'strip') return corner === undefined ? removeStrip(card, id) : removeCorner(card, id, corner);
  if (kind === 'patch') return { ...card, patches: card.patches.filter((each) => each.id !== id) };
  if (kind === 'flap') return { ...card, flaps: card.flaps.filter((each) => each.id !== id) };
  return removePart(card, id);
}

function freeName(letter: string, taken: readonly { id: string }[]): string {
  let n = taken.length + 1;
  while (taken.some(({ id }) => id === `${letter}${n}`)) n++;
  return `${letter}${n}`;
}
