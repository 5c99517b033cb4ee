import { cardSchema } from '../../src/card/index.ts';
import type { Card, TouchUp } from '../../src/card/index.ts';
import { brush, unbrush } from '../../src/check/index.ts';
import type { Checked } from '../../src/check/index.ts';
import { paintPlan } from '../../src/plan/index.ts';
import { verdictOf } from '../../src/net/index.ts';
import { solveStates } from '../../src/power/index.ts';
import { trace, type Traced } from '../../src/trace/index.ts';
import { nets } from '../../src/check/nets.ts';

/** A card of forty strips with twenty lamps across them, traced from its plan. */
export function fortyPieces(withPlan: boolean): Checked {
  const planned = cardSchema.parse(cardOfForty());
  const mask = paintPlan(planned, 10);
  const card = withPlan ? planned : { ...planned, plan: undefined };
  const traced = trace(mask);
  const rgb = new Uint8Array(3);
  return {
    photo: { name: 'forty', width: 1, height: 1 },
    untaught: new Map(),
    outline: {
      cornersPx: [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ],
      certainty: 1,
      k1: 0,
      residualMm: 0,
    },
    sheet: { ...mask, rgb, toPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1], photoPxPerMm: 10 },
    shots: [],
    seen: mask,
    suggested: { lamps: [] },
    mask,
    traced,
    ...netted(traced, card),
    timingsMs: { decode: 0, square: 0, copper: 0, trace: 0, net: 0, power: 0 },
  };
}

/** What a part laid anew is answered with at once, on the copper as it was traced. */
function netted(traced: Traced, card: Card) {
  const { netlist, compared } = nets(traced, card);
  const power = solveStates(netlist, traced, card, { depth: 'states' });
  return { card, netlist, compared, power, verdict: verdictOf(netlist.findings) };
}

function cardOfForty(): unknown {
  const strips = Array.from({ length: 40 }, (_, i) => {
    const x = 10 + 22 * (i % 4);
    const y = 10 + 13 * Math.floor(i / 4);
    const path = [
      [x, y],
      [x + 16, y],
      [x + 16, y + 7],
    ];
    return { id: `S${i}`, net: `n${i}`, width_mm: 3, path };
  });
  const lamps = Array.from({ length: 20 }, (_, i) => {
    const [a, b] = [strips[2 * i], strips[2 * i + 1]];
    return { id: `L${i}`, plus: [a.path[1][0], a.path[1][1]], minus: [b.path[0][0] + 0.5, b.path[0][1]] };
  });
  return {
    format: 'foilproof/1',
    base: { width_mm: 105, height_mm: 148 },
    lamps,
    cell: { at: [52, 140], upper_contact: [11, 10] },
    plan: { strips },
  };
}

export interface TapMs {
  pieces: number;
  tap: number;
  brush: number;
  unbrush: number;
}

/** Medians of a lamp tapped to another place, a brush stroke, and its undoing. */
export function tapTimes(withPlan: boolean, times = 15): TapMs {
  let checked = fortyPieces(withPlan);
  const stroke: TouchUp = {
    do: 'add',
    width_mm: 2,
    path: [
      [30, 30],
      [36, 30],
    ],
  };
  const taken: Record<'tap' | 'brush' | 'unbrush', number[]> = { tap: [], brush: [], unbrush: [] };
  const time = (as: keyof typeof taken, work: () => Checked) => {
    const begun = performance.now();
    checked = work();
    taken[as].push(performance.now() - begun);
  };
  for (let i = 0; i < times; i++) {
    const card = moved(checked.card, i);
    time('tap', () => ({ ...checked, ...netted(checked.traced, card) }));
    time('brush', () => brush(checked, stroke));
    time('unbrush', () => unbrush(checked));
  }
  const median = (of: number[]) => [...of].sort((a, b) => a - b)[of.length >> 1];
  const pieces = checked.traced.pieces.length;
  return { pieces, tap: median(taken.tap), brush: median(taken.brush), unbrush: median(taken.unbrush) };
}

function moved(card: Card, by: number): Card {
  const [first, ...others] = card.lamps;
  return { ...card, lamps: [{ ...first, plus: [first.plus[0], first.plus[1] + (by % 3) * 0.1] }, ...others] };
}
