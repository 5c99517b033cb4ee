import { describe, expect, it } from 'vitest';
import { cardFrom, type CardInput } from '../../src/card/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import { buildNetlist } from '../../src/net/index.ts';
import { strip, traceDrawn, type Laid } from './drawnSheet.ts';
import { seeded } from '../trace/creasedStrip.ts';

const side = 36;

interface Random {
  strips: { widthMm: number; path: Point[] }[];
  taps: { id: string; at: [Point, Point] }[];
}

/** Some strips across a small square sheet, and contacts whose sides are tapped on them. */
function randomCard(seed: number): Random {
  const random = seeded(seed);
  const at = () => 3 + Math.round(random() * 300) / 10;
  const strips = Array.from({ length: 5 }, () => {
    const [x, y] = [at(), at()];
    const path: Point[] =
      random() < 0.5
        ? [
            [x, y],
            [at(), y],
          ]
        : [
            [x, y],
            [x, at()],
          ];
    return { widthMm: 2 + Math.round(random() * 20) / 10, path };
  }).filter(({ path: [a, b] }) => Math.hypot(a[0] - b[0], a[1] - b[1]) > 6);
  const taps = strips.slice(1).map(({ path: [a, b] }, k) => {
    const [c, d] = strips[k].path;
    return { id: `C${k}`, at: [middle(a, b, 0.3), middle(c, d, 0.7)] as [Point, Point] };
  });
  return { strips, taps };
}

function middle(a: Point, b: Point, t: number): Point {
  return [a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])];
}

/** Pads grouped by net, net names left out. */
function padsByNet({ strips, taps }: Random, turn: (p: Point) => Point, more: Laid[] = []): string[][] {
  const laid = strips.map(({ widthMm, path }) => strip(widthMm, ...path.map(turn)));
  const traced = traceDrawn({ width: side, height: side, laid: [...laid, ...more] });
  const pair = (p: Point) => [...turn(p)] as [number, number];
  const card: CardInput = {
    format: 'foilproof/1',
    base: { width_mm: side, height_mm: side },
    contacts: taps.map(({ id, at: [a, b] }) => ({ id, at: [pair(a), pair(b)] })),
  };
  const { nets } = buildNetlist(traced, cardFrom(card, 'random'));
  return nets.map(({ pads }) => [...pads].sort()).filter(({ length }) => length > 0);
}

const sorted = (groups: string[][]) => groups.map((group) => group.join(' ')).sort();

describe.each([1, 2, 3, 4, 5, 6, 7, 8])('random card %d', (seed) => {
  const card = randomCard(seed);
  const upright = padsByNet(card, (p) => p);

  it('has the same nets mirrored and turned by a quarter and a half', () => {
    expect(upright.length).toBeGreaterThan(0);
    const turns: ((p: Point) => Point)[] = [
      ([x, y]) => [side - x, y],
      ([x, y]) => [side - y, x],
      ([x, y]) => [side - x, side - y],
    ];
    for (const turn of turns) expect(sorted(padsByNet(card, turn))).toEqual(sorted(upright));
  });

  it('never has a net split by more copper', () => {
    const random = seeded(900 + seed);
    const from: Point = [3 + random() * 30, 3 + random() * 30];
    const to: Point = [3 + random() * 30, 3 + random() * 30];
    const after = padsByNet(card, (p) => p, [strip(3, from, to)]);
    const netOf = new Map(after.flatMap((group, k) => group.map((pad) => [pad, k])));
    for (const group of upright) {
      const nets = new Set(group.map((pad) => netOf.get(pad)));
      expect(nets.size, group.join(' ')).toBe(1);
    }
  });
});
