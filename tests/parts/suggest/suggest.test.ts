import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cardSchema } from '../../../src/card/index.ts';
import { seeCopperLearned } from '../../../src/copper/learned/index.ts';
import type { Quad } from '../../../src/geometry/index.ts';
import { decodePhoto } from '../../../src/photo/decodeNode.ts';
import { openSuggestions, scaleByCell, suggestParts } from '../../../src/parts/suggest/index.ts';
import type { Suggested } from '../../../src/parts/suggest/index.ts';
import { squareUp } from '../../../src/sheet/index.ts';

const folder = new URL('../../../fixtures/', import.meta.url);
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, folder), 'utf8'));

/** The sheet squared up by its true corners, as if the base were `times` its size. */
async function suggested(name: string, times = 1): Promise<Suggested> {
  const { base } = read(`${name}.json`) as { base: { corners_px: Quad } };
  const card = cardSchema.parse(read(`${name}.card.json`));
  const photo = await decodePhoto(readFileSync(new URL(`${name}.jpg`, folder)), name);
  const size = { width: card.base.width_mm * times, height: card.base.height_mm * times };
  const sheet = squareUp(photo, base.corners_px, size);
  return suggestParts(sheet, times === 1 ? await seeCopperLearned(sheet) : undefined);
}

describe('what a photograph suggests', () => {
  it('is every lamp of the card, within 3 mm, nothing else, and no cell where none lies', async () => {
    const { lamps, cell } = await suggested('sound');
    const card = cardSchema.parse(read('sound.card.json'));
    const middle = ({ plus, minus }: { plus: readonly number[]; minus: readonly number[] }) =>
      [0, 1].map((k) => (plus[k] + minus[k]) / 2);
    const near = card.lamps.map((lamp) =>
      lamps.filter((seen) => {
        const [a, b] = [middle(lamp), middle(seen)];
        return Math.hypot(a[0] - b[0], a[1] - b[1]) < 3;
      }),
    );
    expect(near.map((found) => found.length)).toEqual(card.lamps.map(() => 1));
    expect(lamps).toHaveLength(card.lamps.length);
    expect(cell).toBeUndefined();
  }, 240_000);

  it('is the cell by its circle, which agrees with its known diameter (IEC 60086-2, CR2032: 19.7 to 20.0 mm)', async () => {
    const found = await suggested('gap-and-reversed');
    const card = cardSchema.parse(read('gap-and-reversed.card.json'));
    expect(found.cell!.kind).toBe('CR2032');
    expect(found.cell!.certainty).toBeGreaterThan(0.6);
    const [x, y] = card.cell!.at;
    expect(Math.hypot(found.cell!.at[0] - x, found.cell!.at[1] - y)).toBeLessThan(1.5);
    expect(scaleByCell(card, found)!.agrees).toBe(true);
    expect(openSuggestions(found, card)).toEqual({ lamps: [] });
    const bare = openSuggestions(found, { ...card, lamps: card.lamps.slice(1), cell: undefined });
    expect(bare.lamps).toHaveLength(1);
    expect(bare.cell).toBe(found.cell);
  }, 240_000);

  it('warns where the base is given a tenth too large', async () => {
    const found = await suggested('gap-and-reversed', 1.1);
    const card = cardSchema.parse(read('gap-and-reversed.card.json'));
    const at: [number, number] = [card.cell!.at[0] * 1.1, card.cell!.at[1] * 1.1];
    const scale = scaleByCell({ ...card, cell: { ...card.cell!, at } }, found)!;
    expect(scale.agrees).toBe(false);
    expect(scale.ratio).toBeGreaterThan(1.03);
    expect(scale.say).toMatch(/scale/);
  }, 240_000);
});
