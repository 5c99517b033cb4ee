import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import type { Sharp } from 'sharp';
import { describe, expect, it } from 'vitest';
import { cardSchema } from '../../src/card/index.ts';
import type { Card } from '../../src/card/index.ts';
import { check } from '../../src/check/index.ts';
import type { Checked } from '../../src/check/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import { long } from '../long.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';

const fixture = (name: string) => fileURLToPath(new URL(`../../fixtures/${name}`, import.meta.url));
const card = cardSchema.parse(JSON.parse(await readFile(fixture('gap-1.2.card.json'), 'utf8')));

/**
 * Which pads lie on one net, whatever the nets are called. A contact's two sides are lettered by which lies nearer its middle,
 * a tie on this card, so the letter is left out.
 */
function partition({ netlist }: Checked): string[] {
  const groups = new Map<string, string[]>();
  for (const [pad, net] of Object.entries(netlist.netOf))
    groups.set(net, [...(groups.get(net) ?? []), pad.replace(/^(C\d)[ab]$/, '$1')]);
  return [...groups.values()].map((pads) => pads.sort().join(' ')).sort();
}

async function netsOf(change: (image: Sharp) => Sharp, of: Card): Promise<string[]> {
  const bytes = await change(sharp(fixture('gap-1.2.jpg')))
    .png({ compressionLevel: 1 })
    .toBuffer();
  return partition(await check(await decodePhoto(bytes, 'turned.png'), of, { depth: 'states' }));
}

/** The card of a base seen in a mirror: every x counted from the other side. */
function mirrored(of: Card): Card {
  const flip = ([x, y]: Point): [number, number] => [of.base.width_mm - x, y];
  return {
    ...of,
    lamps: of.lamps.map((l) => ({ ...l, plus: flip(l.plus), minus: flip(l.minus) })),
    cell: of.cell && {
      ...of.cell,
      at: flip(of.cell.at),
      upper_contact: of.cell.upper_contact && flip(of.cell.upper_contact),
    },
    contacts: of.contacts.map((c) => ({ ...c, at: flip(c.at as Point) })),
    patches: of.patches.map((p) => ({
      ...p,
      outline: p.outline.map(flip),
      beneath: p.beneath.map((s) => ({ ...s, path: s.path.map(flip) })),
    })),
    plan: of.plan && {
      ...of.plan,
      strips: of.plan.strips.map((s) => ({ ...s, path: s.path.map(flip) })),
    },
  };
}

describe('The net does not depend on how the photograph is held', () => {
  it('is the same for the picture turned and mirrored, the outline and its turn found anew', async () => {
    const upright = await netsOf((image) => image, card);
    expect(upright.length).toBeGreaterThan(6);
    if (long) expect(await netsOf((image) => image.rotate(180), card)).toEqual(upright);
    expect(await netsOf((image) => image.rotate(90), card)).toEqual(upright);
    expect(await netsOf((image) => image.flop(), mirrored(card))).toEqual(upright);
  }, 240_000);
});
