import type { Card, CardInput } from '../../../src/card/index.ts';
import { cardSchema } from '../../../src/card/index.ts';
import type { CopperMask } from '../../../src/copper/index.ts';
import type { Point } from '../../../src/geometry/index.ts';
import type { Ribbon } from '../../../src/plan/strip/ribbon.ts';
import { boxOf, distanceToRibbon } from '../../../src/plan/strip/ribbon.ts';
import type { Traced } from '../../../src/trace/index.ts';
import { trace } from '../../../src/trace/index.ts';

export const PX_PER_MM = 10;

/** A small A7 card of the tests' own: two rails, three branches a side, three lamps, light holes over them. */
export function smallCard(changes: Partial<CardInput> = {}): Card {
  const lampsAt = [25, 50, 75];
  return cardSchema.parse({
    format: 'foilproof/1',
    base: { width_mm: 105, height_mm: 74 },
    cell: { at: [12, 37] },
    lamps: lampsAt.map((x, k) => ({ id: `L${k + 1}`, plus: [x, 34.5], minus: [x, 39.5] })),
    plan: {
      strips: [
        {
          id: 'plus rail',
          net: 'plus',
          width_mm: 5,
          path: [
            [8, 10],
            [95, 10],
          ],
        },
        {
          id: 'minus rail',
          net: 'minus',
          width_mm: 5,
          path: [
            [8, 64],
            [95, 64],
          ],
        },
        ...lampsAt.flatMap((x, k) => [
          {
            id: `plus ${k + 1}`,
            net: 'plus',
            width_mm: 4,
            path: [
              [x, 10],
              [x, 35],
            ] as Point[],
          },
          {
            id: `minus ${k + 1}`,
            net: 'minus',
            width_mm: 4,
            path: [
              [x, 64],
              [x, 39],
            ] as Point[],
          },
        ]),
      ],
      holes: lampsAt.map((x, k) => ({ id: `H${k + 1}`, at: [x, 37] as Point })),
    },
    ...changes,
  } as CardInput);
}

/** The planned strips as ribbons, by id. */
export function planned(card: Card): Map<string, Ribbon> {
  return new Map(card.plan!.strips.map(({ id, path, width_mm }) => [id, { path, widthMm: width_mm }]));
}

/** A photograph's trace of a card on which these ribbons are laid and these places cut away again. */
export function laid(card: Card, ribbons: Iterable<Ribbon>, cuts: Ribbon[] = []): Traced {
  const width = Math.round(card.base.width_mm * PX_PER_MM);
  const height = Math.round(card.base.height_mm * PX_PER_MM);
  const filled = new Uint8Array(width * height);
  for (const ribbon of ribbons) paint(filled, width, height, ribbon, 1);
  for (const cut of cuts) paint(filled, width, height, cut, 0);
  const mask: CopperMask = {
    width,
    height,
    pxPerMm: PX_PER_MM,
    originMm: [0, 0],
    baseMm: { width: card.base.width_mm, height: card.base.height_mm },
    filled,
    strict: filled,
    likelihood: filled.map((v) => v * 255),
    readable: 1,
    troubles: [],
    by: 'given',
  };
  return trace(mask);
}

function paint(on: Uint8Array, width: number, height: number, ribbon: Ribbon, value: 0 | 1): void {
  const box = boxOf(ribbon.path, ribbon.widthMm);
  for (let j = Math.max(0, Math.floor(box.y0 * PX_PER_MM)); j < Math.min(height, box.y1 * PX_PER_MM); j++) {
    for (let i = Math.max(0, Math.floor(box.x0 * PX_PER_MM)); i < Math.min(width, box.x1 * PX_PER_MM); i++) {
      const place: Point = [(i + 0.5) / PX_PER_MM, (j + 0.5) / PX_PER_MM];
      if (distanceToRibbon(place, ribbon) === 0) on[j * width + i] = value;
    }
  }
}
