import { cardSchema, type Card } from '../../card/index.ts';
import type { Photo } from '../../photo/index.ts';
import { paintPlan } from '../../plan/index.ts';

/** A small card with a little of everything: rails, strips to two lamps, the cell, a contact. */
const card: Card = cardSchema.parse({
  format: 'foilproof/1',
  base: { width_mm: 52, height_mm: 62 },
  lamps: [
    { id: 'A', plus: [22, 17], minus: [22, 24], colour: 'white', intent: 'always' },
    { id: 'B', plus: [35, 17], minus: [35, 24], colour: 'red', intent: { contact: 'C' } },
  ],
  cell: { kind: 'CR1225', at: [20, 47], up: '+', upper_contact: [10, 47] },
  contacts: [{ id: 'C', how: 'press', at: [35, 37.5], reach_mm: 3 }],
  plan: {
    strips: [
      strip('P', 'plus', 4, [10, 53], [10, 10], [42, 10]),
      strip('P-A', 'plus', 3, [22, 9], [22, 18]),
      strip('P-B', 'plus', 3, [35, 9], [35, 18]),
      strip('A', 'minus', 3, [22, 23], [22, 40]),
      strip('B', 'b', 3, [35, 23], [35, 36]),
      strip('N', 'minus', 4, [17, 41], [42, 41]),
    ],
  },
});

function strip(id: string, net: string, width_mm: number, ...path: [number, number][]) {
  return { id, net, width_mm, path };
}

/** Photo px to the mm, mm of table round the sheet, and the strip of paper that parts the copper, mm. */
const pxPerMm = 15;
const tableMm = 12;
const cut = { from: 30.4, to: 31.6 };

const table = [70, 60, 52];
const paper = [226, 222, 214];
const tape = [186, 118, 78];

/** A drawing of that card on a dark table, the copper cut through: what the check meets in a photograph, as plain as can be. */
export function drawnSheet(): { photo: Photo; card: Card } {
  const { width_mm, height_mm } = card.base;
  const plan = paintPlan(card, pxPerMm);
  const [width, height] = [width_mm, height_mm].map((mm) => (mm + 2 * tableMm) * pxPerMm);
  const rgba = new Uint8ClampedArray(4 * width * height).fill(255);
  for (let y = 0, p = 0; y < height; y++) {
    for (let x = 0; x < width; x++, p += 4) {
      const [u, v] = [x - tableMm * pxPerMm, y - tableMm * pxPerMm];
      const onSheet = u >= 0 && v >= 0 && u < plan.width && v < plan.height;
      const parted = v > cut.from * pxPerMm && v < cut.to * pxPerMm;
      const colour = !onSheet ? table : plan.filled[v * plan.width + u] && !parted ? tape : paper;
      const grain = ((x * 7919 + y * 104729) % 23) - 11;
      for (let c = 0; c < 3; c++) rgba[p + c] = colour[c] + grain;
    }
  }
  return { photo: { name: 'drawn', width, height, rgba }, card };
}
