import { readFileSync } from 'node:fs';
import { cardSchema, type Card } from '../../src/card/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import type { Finding } from '../../src/net/index.ts';
import { statesOf } from '../../src/net/states.ts';
import { solveStates, type PowerReport } from '../../src/power/index.ts';
import type { Recordable } from '../../src/record/index.ts';
import { drawnCard } from '../power/drawnCard.ts';

/** Harbour Night as its plan says it should be built: one piece a strip, nothing wrong but what is given. */
export function harbour(findings: Finding[] = []): { checked: Recordable; card: Card } {
  const file = new URL('../../fixtures/sound.card.json', import.meta.url);
  const card = cardSchema.parse(JSON.parse(readFileSync(file, 'utf8')));
  const planned = card.plan?.strips ?? [];
  const strips = planned.map(({ net, width_mm: widthMm, path }) => ({ net, widthMm, path }));
  const pads = padNets(card);
  const { traced, netlist } = drawnCard(strips, {}, [], pads);
  traced.pieces.forEach((piece, i) => {
    const { width_mm: widthMm, path } = planned[i] as (typeof planned)[number];
    piece.outline = { outer: ribbon(path, widthMm), holes: [] };
  });
  const states = statesOf(card, netlist.nets, pads);
  const checked: Recordable = {
    photo: { name: 'harbour.jpg', width: 2016, height: 1512 },
    card,
    outline: {
      cornersPx: [
        [0, 0],
        [1050, 0],
        [1050, 1480],
        [0, 1480],
      ],
      certainty: 1,
      k1: 0,
      residualMm: 0,
    },
    sheet: {
      width: 1050,
      height: 1480,
      pxPerMm: 10,
      originMm: [0, 0],
      baseMm: { width: 105, height: 148 },
      rgb: new Uint8Array(0),
      toPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1],
      photoPxPerMm: 9.4,
    },
    traced,
    netlist: { ...netlist, states, findings, notSeen: ['Copper under the cell and under patch K1.'] },
    verdict: findings.some(({ weight }) => weight === 'holds') ? 'hold' : 'clear-once-checked',
    timingsMs: { decode: 12.345, square: 3 },
  };
  return { checked, card };
}

/** What lights of it, worked out in full. */
export function powerOf({ netlist, traced }: Recordable, card: Card): PowerReport {
  return solveStates(netlist, traced, card);
}

/** Pads by the plan: beams hang between the plus rail and their own strips, windows between the rails. */
function padNets(card: Card): Record<string, string> {
  const pads: Record<string, string> = { 'cell+': 'plus', 'cell-': 'minus' };
  for (const { id } of card.lamps) {
    pads[`${id}+`] = 'plus';
    pads[`${id}-`] = id.startsWith('B') ? `beam-${id.slice(1)}` : 'minus';
  }
  for (const { id } of card.contacts) {
    pads[`${id}a`] = `beam-${id.slice(1)}`;
    pads[`${id}b`] = 'minus';
  }
  return pads;
}

/** The outline of a strip with square corners. */
function ribbon(path: readonly Point[], widthMm: number): Point[] {
  const half = widthMm / 2;
  const side = (turn: 1 | -1): Point[] =>
    path.map(([x, y], i) => {
      const [before, after] = [direction(path, i - 1), direction(path, i)];
      const [ux, uy] = before ?? after ?? [1, 0];
      const [vx, vy] = after ?? before ?? [1, 0];
      // At a right-angled corner the sum of both normals is the mitre; at an end both are the same one.
      const share = before && after && ux * vx + uy * vy < 0.5 ? 1 : 0.5;
      return [x - turn * half * share * (uy + vy), y + turn * half * share * (ux + vx)];
    });
  return [...side(1), ...side(-1).reverse()];
}

function direction(path: readonly Point[], i: number): Point | undefined {
  const [a, b] = [path[i], path[i + 1]];
  if (!a || !b) return undefined;
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
}

/** Findings of several weights, one of them settled by hand. */
export const someFindings: Finding[] = [
  finding({
    kind: 'gap',
    at: [41.2, 80],
    sizeMm: 0.8,
    certainty: 0.97,
    weight: 'holds',
    lamps: ['B3'],
    nets: ['beam-3'],
  }),
  finding({
    kind: 'seam',
    at: [95, 16],
    certainty: 0.8,
    weight: 'check',
    lamps: ['W1', 'W2'],
    nets: ['plus'],
  }),
  finding({
    kind: 'seam',
    at: [85.5, 134.5],
    certainty: 0.7,
    weight: 'check',
    nets: ['minus'],
    checked: { note: 'metered: 0.1 ohm & steady <ok>' },
  }),
  finding({
    kind: 'near-edge',
    at: [97, 124.5],
    sizeMm: 1.2,
    certainty: 0.9,
    weight: 'note',
    nets: ['plus'],
  }),
];

function finding(given: Partial<Finding> & Pick<Finding, 'kind' | 'at' | 'certainty' | 'weight'>): Finding {
  return { lamps: [], nets: [], sheet: 'base', facts: {}, ...given };
}
