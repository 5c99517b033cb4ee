import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cardSchema } from '../../../src/card/index.ts';
import type { Card } from '../../../src/card/index.ts';
import { check } from '../../../src/check/index.ts';
import { weighOutline } from '../../../src/check/weighOutline.ts';
import type { Point, Quad } from '../../../src/geometry/index.ts';
import { scaleTold } from '../../../src/parts/scale/index.ts';
import { middleBy } from '../../../src/parts/scale/middleBy.ts';
import type { Suggested } from '../../../src/parts/suggest/index.ts';
import { decodePhoto } from '../../../src/photo/decodeNode.ts';
import { paintPlan } from '../../../src/plan/index.ts';
import { trace } from '../../../src/trace/index.ts';

const folder = new URL('../../../fixtures/', import.meta.url);
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, folder), 'utf8'));
const card = cardSchema.parse(read('sound.card.json'));
const none: Suggested = { lamps: [] };

/** The card's things as they lie where the outline takes in `times` as much as the base in each direction. */
function shrunk(of: Card, times: number): Card {
  const at = ([x, y]: Point): [number, number] => [x / times + 5, y / times + 5];
  return {
    ...of,
    lamps: of.lamps.map((l) => ({ ...l, plus: at(l.plus), minus: at(l.minus) })),
    plan: {
      ...of.plan!,
      strips: of.plan!.strips.map((s) => ({ ...s, width_mm: s.width_mm / times, path: s.path.map(at) })),
    },
  };
}
const tracedAs = (times: number) => trace(paintPlan(shrunk(card, times), 10));
const lampsAs = (times: number): Suggested => ({
  lamps: shrunk(card, times).lamps.map(({ plus, minus }) => ({ plus, minus, certainty: 0.9 })),
});

describe('the scale', () => {
  it('is told by the width of the tape: agreeing on the base, too small on a sheet 1.3 times as large', () => {
    expect(scaleTold(card, none, tracedAs(1))).toMatchObject({
      by: 'tape',
      agrees: true,
      otherFigure: false,
    });
    const larger = scaleTold(card, none, tracedAs(1.3))!;
    expect(larger).toMatchObject({ by: 'tape', agrees: false, otherFigure: true });
    expect(larger.ratio).toBeCloseTo(1 / 1.3, 1);
    expect(larger.say).toMatch(/larger than the base.*Drag the four corners/);
    expect(scaleTold(card, none, tracedAs(0.8))!.say).toMatch(/smaller than the base/);
  });

  it('is told by the lamps, whatever the turn, and not by other lamps than the card has', () => {
    const bare = { ...card, plan: undefined };
    expect(scaleTold(bare, lampsAs(1), tracedAs(1))).toMatchObject({ by: 'lamps', agrees: true });
    expect(scaleTold(bare, lampsAs(1.3), tracedAs(1.3))).toMatchObject({ by: 'lamps', otherFigure: true });
    const { lamps } = lampsAs(1);
    const upsideDown = lamps.map((l) => ({ ...l, plus: [100 - l.plus[0], 140 - l.plus[1]] as Point }));
    expect(scaleTold(bare, { lamps: upsideDown }, tracedAs(1))?.agrees ?? true).toBe(true);
    const moved = lamps.map((l, i) =>
      i === 0 ? { ...l, plus: [300, 300] as Point, minus: [300, 305] as Point } : l,
    );
    expect(scaleTold(bare, { lamps: moved }, tracedAs(1))).toBeUndefined();
  });

  it('is not doubted for the tape where the lamps agree', () => {
    expect(scaleTold(card, lampsAs(1), tracedAs(1.3))).toMatchObject({ by: 'lamps', agrees: true });
  });

  it('is not told by a plan whose widths are not those seen', () => {
    const strips = card.plan!.strips.map((s, i) => ({ ...s, width_mm: 1.2 + 0.7 * i }));
    expect(scaleTold({ ...card, plan: { ...card.plan!, strips } }, none, tracedAs(1))).toBeUndefined();
  });
});

describe('weighOutline', () => {
  const outline = { cornersPx: [[0, 0], [1, 0], [1, 1], [0, 1]] as Quad, certainty: 0.97, k1: 0, residualMm: 0 }; // prettier-ignore
  const off = scaleTold(card, none, tracedAs(1.3));

  it('believes no outline that the scale speaks against, and believes it again once it agrees', () => {
    const doubted = weighOutline(outline, off);
    expect(doubted.certainty).toBeLessThan(0.5);
    expect(weighOutline(doubted, off)).toEqual(doubted);
    expect(weighOutline(doubted, undefined)).toEqual(outline);
  });

  it('leaves corners alone that the maker laid', () => {
    expect(weighOutline({ ...outline, certainty: 1 }, off).certainty).toBe(1);
  });

  it('doubts the outline of a photograph whose sheet was taken 1.3 times too large', async () => {
    const { base } = read('sound.json') as { base: { corners_px: Quad } };
    const photo = await decodePhoto(readFileSync(new URL('sound.jpg', folder)), 'sound.jpg');
    const options = { depth: 'states' as const };
    const [mx, my] = [0, 1].map((k) => base.corners_px.reduce((sum, p) => sum + p[k] / 4, 0));
    const certainties = [];
    for (const times of [1, 1.3]) {
      const cornersPx = base.corners_px.map(([x, y]) => [mx + (x - mx) * times, my + (y - my) * times]);
      const given = { ...outline, cornersPx: cornersPx as unknown as Quad };
      certainties.push((await check(photo, card, { ...options, outline: given })).outline.certainty);
    }
    expect(certainties[0]).toBe(0.97);
    expect(certainties[1]).toBeLessThan(0.5);
  }, 240_000);
});

describe('middleBy', () => {
  it('is the value with half the weight on each side', () => {
    const values = [
      { value: 9, weight: 1 },
      { value: 5, weight: 6 },
      { value: 1, weight: 2 },
    ];
    expect(middleBy(values)).toEqual({ lower: 5, middle: 5, upper: 5, weight: 9 });
    expect(middleBy([{ value: 3, weight: 0 }])).toBeUndefined();
  });
});
