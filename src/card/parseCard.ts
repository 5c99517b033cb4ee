import type { z } from 'zod';
import { cardWords } from '../words/card.ts';
import { FoilproofError } from '../words/index.ts';
import { cardSchema } from './schema.ts';
import type { Card } from './schema.ts';

/**
 * Reads a card file's text.
 * @param name of the file, for the sentence
 * @throws FoilproofError naming the key that is wrong
 */
export function parseCard(text: string, name: string): Card {
  return cardFrom(jsonOf(text, name), name);
}

/** Takes parsed JSON as a card. @throws FoilproofError naming the key that is wrong */
export function cardFrom(value: unknown, name: string): Card {
  const result = cardSchema.safeParse(value);
  if (!result.success) throw new FoilproofError(sentence(result.error, name));
  refuseTwins(result.data, name);
  refuseOffBase(result.data, name);
  return result.data;
}

function jsonOf(text: string, name: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    throw new FoilproofError(cardWords.notJson(name));
  }
}

function sentence(error: z.ZodError, name: string): string {
  const [first, ...others] = error.issues;
  const where = pathOf(first.path);
  const more = others.length > 0 ? cardWords.more(others.length) : '';
  if (first.code === 'unrecognized_keys') {
    const keys = first.keys.map((k) => `"${k.slice(0, 60)}"`).join(', ');
    return cardWords.unknownKeys(name, keys, where ? cardWords.within(where) : '') + more;
  }
  const why = first.message.replace(/\.$/, '');
  return (where ? cardWords.wrong(name, where, why) : cardWords.wrongWhole(name, why)) + more;
}

/** ["lamps", 0, "plus"] as lamps[0].plus */
function pathOf(path: PropertyKey[]): string {
  return path.map((p, i) => (typeof p === 'number' ? `[${p}]` : `${i > 0 ? '.' : ''}${String(p)}`)).join('');
}

function refuseTwins(card: Card, name: string): void {
  const lists = { lamps: card.lamps, contacts: card.contacts, flaps: card.flaps, patches: card.patches };
  for (const [what, list] of Object.entries(lists)) {
    const seen = new Set<string>();
    for (const { id } of list) {
      if (seen.has(id)) throw new FoilproofError(cardWords.twice(name, what, id));
      seen.add(id);
    }
  }
}

/** Parts may lie on a flap that stands out of the base, but not farther out than any flap reaches. */
function refuseOffBase(card: Card, name: string): void {
  const { width_mm: w, height_mm: h, margin_mm } = card.base;
  const reach = Math.max(
    margin_mm,
    ...card.flaps.flatMap((f) => f.outline.map(([x, y]) => beyond(x, y, w, h))),
  );
  const places: [string, readonly [number, number]][] = card.lamps.flatMap((l) => [
    [`lamp ${l.id}`, l.plus] as [string, readonly [number, number]],
    [`lamp ${l.id}`, l.minus] as [string, readonly [number, number]],
  ]);
  if (card.cell) places.push(['the cell', card.cell.at]);
  for (const [what, [x, y]] of places) {
    if (beyond(x, y, w, h) <= reach + 1) continue;
    const at = `(${x.toFixed(1)}, ${y.toFixed(1)})`;
    throw new FoilproofError(cardWords.offBase(name, what, at, `${w} x ${h}`));
  }
}

function beyond(x: number, y: number, w: number, h: number): number {
  return Math.max(0, -x, -y, x - w, y - h);
}
