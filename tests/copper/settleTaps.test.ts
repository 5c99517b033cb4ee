import { describe, expect, it } from 'vitest';
import { components, settleTaps } from '../../src/copper/index.ts';
import type { CopperMask } from '../../src/copper/index.ts';
import type { Point } from '../../src/geometry/index.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';
import { trace } from '../../src/trace/index.ts';
import { bridgedMask, drawStrip, seeded, type DrawnStrip } from '../trace/creasedStrip.ts';

/** Row of a drawn strip's middle, px; see creasedStrip.ts. */
const axis = 60;

const noColours = (): never => {
  throw new Error('No colours are asked here.');
};

/** What the taps make of a mask where geometry is enough. */
const settle = (mask: CopperMask, sheet: SquaredSheet, taps: { copper?: Point[]; paper?: Point[] }) =>
  settleTaps(noColours, sheet, mask, undefined, { copper: taps.copper ?? [], paper: taps.paper ?? [] });

/** The strip's whole band, of which the nets are sure. */
function sureMask(drawn: DrawnStrip): CopperMask {
  const mask = bridgedMask(drawn);
  return { ...mask, likelihood: mask.filled.map((v) => 250 * v), by: 'learned' };
}

const labelsOf = ({ filled, width, height }: CopperMask) => components(filled, width, height, 8);

const isParted = (mask: CopperMask): boolean => {
  const { labels } = labelsOf(mask);
  return labels[axis * mask.width + 30] !== labels[axis * mask.width + 290];
};

const area = ({ filled }: CopperMask): number => filled.reduce((sum, v) => sum + v, 0);

/** A place up to half a millimetre off, as a finger is. */
function aimed([x, y]: readonly [number, number], random: () => number): Point {
  const [angle, far] = [2 * Math.PI * random(), 0.5 * Math.sqrt(random())];
  return [x + far * Math.cos(angle), y + far * Math.sin(angle)];
}

/** A picture of flat colours: paper, and rectangles on it, px [x0, y0, x1, y1]. */
interface Flat {
  copper: [number, number, number, number][];
  /** Rectangles that only the mask takes for copper, or does not. */
  added?: [number, number, number, number][];
  missed?: [number, number, number, number][];
}

const [paperRgb, copperRgb] = [
  [226, 224, 220],
  [150, 98, 74],
];

function flat({ copper, added = [], missed = [] }: Flat): { sheet: SquaredSheet; mask: CopperMask } {
  const { sheet } = drawStrip({ seed: 1, paper: 'white', gapMm: 0 });
  const { width, height } = sheet;
  const random = seeded(3);
  const rgb = new Uint8Array(3 * width * height);
  const filled = new Uint8Array(width * height);
  const within =
    (i: number, j: number) =>
    ([x0, y0, x1, y1]: Flat['copper'][number]) =>
      i >= x0 && i < x1 && j >= y0 && j < y1;
  for (let j = 0, k = 0; j < height; j++) {
    for (let i = 0; i < width; i++, k++) {
      const laid = copper.some(within(i, j));
      const noise = 6 * random() - 3;
      rgb.set(
        (laid ? copperRgb : paperRgb).map((v) => v + noise),
        3 * k,
      );
      if ((laid || added.some(within(i, j))) && !missed.some(within(i, j))) filled[k] = 1;
    }
  }
  const likelihood = filled.map((v) => 250 * v);
  const base = bridgedMask(drawStrip({ seed: 1, paper: 'white', gapMm: 0 }));
  return {
    sheet: { ...sheet, rgb },
    mask: { ...base, filled, strict: filled.slice(), likelihood, by: 'learned' },
  };
}

describe('A tap on paper', () => {
  it.each([
    ['white', 0.4],
    ['white', 0.7],
    ['kraft', 0.5],
    ['kraft', 0.7],
  ] as const)(
    'opens a cut on %s of %f mm that the mask runs over, and it is told as a gap there',
    async (paper, gapMm) => {
      const random = seeded(17);
      let near = 0;
      for (let seed = 60; seed < 72; seed++) {
        const drawn = drawStrip({ seed, paper, gapMm });
        const mask = sureMask(drawn);
        expect(isParted(mask)).toBe(false);
        const opened = await settle(mask, drawn.sheet, { paper: [aimed(drawn.gapAt, random)] });
        expect(isParted(opened)).toBe(true);
        const crossing = trace(opened, drawn.sheet).crossings.find((each) => each.opened);
        expect(crossing?.gap).toBeGreaterThan(0.9);
        expect(Math.abs(crossing!.at[0] - drawn.gapAt[0])).toBeLessThan(1);
        if (Math.abs(crossing!.at[0] - drawn.gapAt[0]) < 0.35) near++;
      }
      expect(near).toBeGreaterThanOrEqual(9);
    },
  );

  it('opens a cut that runs aslant by 40 degrees, over the whole strip', async () => {
    const { sheet, mask } = flat({ copper: [[10, 35, 310, 85]] });
    const rgb = sheet.rgb.map((v, n) => {
      const k = Math.floor(n / 3);
      const [i, j] = [k % 320, Math.floor(k / 320)];
      return Math.abs(i - 160 - Math.tan((40 * Math.PI) / 180) * (j - axis)) < 3.5 ? paperRgb[n % 3] : v;
    });
    const opened = await settle(mask, { ...sheet, rgb }, { paper: [[16.2, 5.7]] });
    expect(isParted(opened)).toBe(true);
    const [{ widthMm, along }] = opened.cuts!;
    expect(widthMm).toBeLessThan(0.9);
    const slant = (Math.acos(Math.abs(along[0])) * 180) / Math.PI;
    expect(Math.abs(slant - 40)).toBeLessThan(8);
  });

  it('on sound tape by mistake opens a thin slit at most, and without the tap the mask is what it was', async () => {
    for (let seed = 200; seed < 210; seed++) {
      const drawn = drawStrip({ seed, paper: seed % 2 ? 'kraft' : 'white', gapMm: 0 });
      const mask = sureMask(drawn);
      const before = mask.filled.slice();
      const opened = await settle(mask, drawn.sheet, { paper: [[16, 6]] });
      expect(area(mask) - area(opened)).toBeLessThan(50 * 16);
      expect(mask.filled).toEqual(before);
      expect((await settle(mask, drawn.sheet, {})) === mask).toBe(true);
    }
  });

  it('parts the strip tapped at and not its neighbour 0.5 mm beside it', async () => {
    const { sheet, mask } = flat({
      copper: [
        [10, 20, 310, 58],
        [10, 63, 310, 101],
      ],
    });
    const opened = await settle(mask, sheet, { paper: [[16, 5.4]] });
    const lower = (filled: Uint8Array) => filled.subarray(61 * 320, 103 * 320);
    expect(lower(opened.filled)).toEqual(lower(mask.filled));
    expect(labelsOf(opened).count).toBe(3);
  });

  it('on bare paper beside a sound strip, or off the sheet, changes nothing', async () => {
    const { sheet, mask } = flat({ copper: [[10, 40, 310, 80]] });
    for (const place of [
      [16, 3.4],
      [16, 2.9],
      [2, 9],
      [-5, 3],
      [90, 4],
    ] as Point[])
      expect((await settle(mask, sheet, { paper: [place] })) === mask).toBe(true);
  });

  it('takes a small piece that stands alone out whole, print or a tool, and leaves the strip', async () => {
    const { sheet, mask } = flat({
      copper: [[10, 70, 310, 110]],
      added: [
        [100, 10, 160, 45],
        [200, 20, 300, 30],
      ],
    });
    const once = await settle(mask, sheet, { paper: [[13, 2.7]] });
    expect(labelsOf(once).count).toBe(2);
    const twice = await settle(mask, sheet, {
      paper: [
        [13, 2.7],
        [24.8, 2.6],
      ],
    });
    expect(labelsOf(twice).count).toBe(1);
    expect(area(twice)).toBe(300 * 40);
  });

  it('opens a thread that the mask leaves between two strips, tapped at or right beside', async () => {
    const { sheet, mask } = flat({
      copper: [
        [10, 40, 150, 80],
        [170, 40, 310, 80],
      ],
      added: [[150, 56, 170, 62]],
    });
    for (const place of [
      [16, 5.9],
      [16.1, 6.6],
    ] as Point[]) {
      const opened = await settle(mask, sheet, { paper: [place] });
      expect(isParted(opened)).toBe(true);
      expect(area(mask) - area(opened)).toBeLessThanOrEqual(20 * 6 + 60);
    }
  });
});

describe('A tap on copper', () => {
  it('settles a doubt about a cut that the mask runs over', async () => {
    let doubts = 0;
    for (let seed = 400; seed < 408; seed++) {
      const drawn = drawStrip({ seed, paper: 'white', gapMm: 0.6 });
      const near = (mask: CopperMask) =>
        trace(mask, drawn.sheet).crossings.filter(
          ({ at, gap }) => gap > 0 && Math.hypot(at[0] - drawn.gapAt[0], at[1] - 6) < 1.2,
        ).length;
      doubts += near(sureMask(drawn));
      expect(near(await settle(sureMask(drawn), drawn.sheet, { copper: [[...drawn.gapAt]] }))).toBe(0);
    }
    expect(doubts).toBeGreaterThanOrEqual(6);
  });

  it('closes an opening of the mask over the strip’s whole width, and no gap is told there', async () => {
    for (let seed = 300; seed < 308; seed++) {
      const drawn = drawStrip({ seed, paper: 'white', gapMm: 0.8 });
      const mask = sureMask(drawn);
      const open = mask.filled.map((v, k) => v & drawn.truth[k]);
      const parted = { ...mask, filled: open, strict: open.slice(), likelihood: open.map((v) => 250 * v) };
      expect(isParted(parted)).toBe(true);
      const random = seeded(seed);
      const joined = await settle(parted, drawn.sheet, { copper: [aimed(drawn.gapAt, random)] });
      expect(isParted(joined)).toBe(false);
      expect(area(joined)).toBeGreaterThan(0.99 * area(mask));
      const traced = trace(joined, drawn.sheet);
      const near = traced.crossings.filter(({ at }) => Math.hypot(at[0] - drawn.gapAt[0], at[1] - 6) < 2);
      expect(near.filter(({ gap, glare }) => gap > 0 || glare > 0)).toEqual([]);
      expect(traced.necks.filter(({ at }) => Math.abs(at[0] - drawn.gapAt[0]) < 2)).toEqual([]);
    }
  });

  it('within the tape, more than a finger’s aim from a cut, leaves the cut open', async () => {
    const { sheet, mask } = flat({
      copper: [
        [10, 40, 156, 80],
        [164, 40, 310, 80],
      ],
    });
    const beside = await settle(mask, sheet, { copper: [[14.4, 6]] });
    expect(beside.filled === mask.filled).toBe(true);
    expect(isParted(await settle(mask, sheet, { copper: [[15.3, 6]] }))).toBe(false);
  });

  it('joins two strips by a sliver as broad as the picture shows, not along their whole sides', async () => {
    const { sheet, mask } = flat({
      copper: [
        [10, 10, 310, 50],
        [10, 70, 310, 110],
        [150, 50, 162, 70],
      ],
      missed: [[150, 50, 162, 70]],
    });
    const joined = await settle(mask, sheet, { copper: [[15.7, 5.8]] });
    expect(labelsOf(joined).count).toBe(1);
    const added = area(joined) - area(mask);
    expect(added).toBeGreaterThan(20 * 8);
    expect(added).toBeLessThan(20 * 24);
  });

  it('on sound copper says so and changes no pixel; on paper far from any strip’s end it changes nothing', async () => {
    const { sheet, mask } = flat({ copper: [[10, 40, 310, 80]] });
    const sworn = await settle(mask, sheet, { copper: [[16, 6]] });
    expect(sworn.filled === mask.filled).toBe(true);
    expect(sworn.sound).toHaveLength(1);
    expect((await settle(mask, sheet, { copper: [[16, 1]] })) === mask).toBe(true);
    expect((await settle(mask, sheet, { copper: [[-4, 90]] })) === mask).toBe(true);
  });

  it('brings back what the nets saw and a later rule took out', async () => {
    const { sheet, mask } = flat({ copper: [[10, 70, 310, 110]] });
    const copper = mask.likelihood.slice();
    for (let j = 20; j < 40; j++) copper.fill(240, j * 320 + 100, j * 320 + 200);
    const learned = { copper, lamp: new Uint8Array(copper.length), cell: new Uint8Array(copper.length) };
    const back = await settleTaps(noColours, sheet, mask, learned, { copper: [[15, 3]], paper: [] });
    expect(area(back) - area(mask)).toBe(100 * 20);
  });
});
