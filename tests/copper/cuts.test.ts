import { describe, expect, it } from 'vitest';
import { components, openCuts } from '../../src/copper/index.ts';
import type { CopperMask } from '../../src/copper/index.ts';
import { trace } from '../../src/trace/index.ts';
import { long } from '../long.ts';
import { bridgedMask, drawStrip, seeded, type DrawnStrip } from '../trace/creasedStrip.ts';

/** Row of the strip's middle and half its width, px; see creasedStrip.ts. */
const axis = 60;
const half = 25;

/** What the net says of copper on the strip, and where it doubts a little, as it does on cuts of 0.5 mm; of 255. */
const sure = 250;
const doubting = 215;

const nowhere = (): boolean => false;

/** A straight line across the strip, px: its place on the axis and its columns per row. */
interface Line {
  x: number;
  slope: number;
}

/** The strip's whole band as the net's mask, which it doubts by a little along some lines but does not part. */
function doubted(drawn: DrawnStrip, lines: readonly Line[]): CopperMask {
  const mask = bridgedMask(drawn);
  const likelihood = mask.filled.map((copper, k) => {
    const [i, j] = [k % mask.width, Math.floor(k / mask.width)];
    const onLine = lines.some(({ x, slope }) => Math.abs(i + 0.5 - x - slope * (j - axis)) < 3);
    return copper * (onLine ? doubting : sure);
  });
  return { ...mask, likelihood, by: 'learned' };
}

const isParted = ({ filled, width, height }: CopperMask): boolean => {
  const { labels } = components(filled, width, height, 8);
  const [left, right] = [60, 260].map((i) => labels[axis * width + i]);
  return left !== right;
};

/** The picture with a line painted over it, `reach` px to both sides of the axis. */
function painted(
  drawn: DrawnStrip,
  { x, slope }: Line,
  halfPx: number,
  reach: number,
  rgb: readonly number[],
): DrawnStrip {
  const { width } = drawn.sheet;
  const out = drawn.sheet.rgb.slice();
  for (let k = 0; k < out.length / 3; k++) {
    const [i, j] = [k % width, Math.floor(k / width)];
    const far = Math.abs(i + 0.5 - x - slope * (j - axis));
    if (Math.abs(j - axis) > reach || far > halfPx + 1) continue;
    const share = Math.min(1, halfPx + 1 - far);
    for (let c = 0; c < 3; c++) out[3 * k + c] = Math.round(share * rgb[c] + (1 - share) * out[3 * k + c]);
  }
  return { ...drawn, sheet: { ...drawn.sheet, rgb: out } };
}

const seeds = (count: number, from: number): number[] => Array.from({ length: count }, (_, n) => from + n);

describe('A cut that the net runs over', () => {
  it.each([
    ['white', 0.5],
    ['white', 0.7],
    ['kraft', 0.5],
    ['kraft', 0.7],
  ] as const)(
    'is opened right across creased tape on %s, %f mm wide, and told with its place',
    (paper, gapMm) => {
      let parted = 0;
      const all = seeds(10, 40);
      for (const seed of all) {
        const drawn = drawStrip({ seed, paper, gapMm });
        const lines = [{ x: 10 * drawn.gapAt[0], slope: gapSlopeOf(drawn) }];
        const opened = openCuts(doubted(drawn, lines), drawn.sheet, nowhere);
        if (!isParted(opened)) continue;
        parted++;
        expect(opened.cuts).toHaveLength(1);
        const crossing = trace(opened, drawn.sheet).crossings.find((each) => each.opened);
        expect(crossing?.gap).toBeGreaterThan(0.9);
        expect(Math.abs(crossing!.at[0] - drawn.gapAt[0])).toBeLessThan(1);
      }
      expect(parted).toBeGreaterThanOrEqual(7);
    },
  );
});

/** The slant of a drawn cut, columns per row, from the truth. */
function gapSlopeOf({ truth, sheet: { width } }: DrawnStrip): number {
  const middleAt = (j: number): number => {
    const open = Array.from({ length: 200 }, (_, n) => 60 + n).filter((i) => !truth[j * width + i]);
    return open.reduce((sum, i) => sum + i, 0) / open.length;
  };
  return (middleAt(axis + 20) - middleAt(axis - 20)) / 40;
}

describe('What is no cut stays shut, however the net doubts it', () => {
  const count = long ? 60 : 12;
  const line = { x: 160, slope: 0.1 };

  it('creases and glints of sound tape: opened on at most 3 % of strips with three doubtful lines each', () => {
    let opened = 0;
    const strips = long ? 200 : 64;
    for (const seed of seeds(strips, 5000)) {
      const drawn = drawStrip({ seed, paper: seed % 2 ? 'kraft' : 'white', gapMm: 0 });
      const random = seeded(seed);
      const lines = [80, 150, 220].map((x) => ({ x: x + 40 * random(), slope: random() - 0.5 }));
      if (openCuts(doubted(drawn, lines), drawn.sheet, nowhere).cuts) opened++;
    }
    expect(opened / strips).toBeLessThanOrEqual(0.03);
  });

  it.each([
    ['a fold that shines', 1.5, half - 1, [250, 236, 228]],
    ['a fold in shade', 1.5, half - 1, [52, 38, 34]],
    ['a pencil line over tape and paper', 1.5, 59, [96, 94, 92]],
    ['a wire across', 4, 59, [170, 40, 38]],
  ] as const)('%s', (_, halfPx, reach, rgb) => {
    for (const seed of seeds(count, 300)) {
      const drawn = drawStrip({ seed, paper: seed % 2 ? 'kraft' : 'white', gapMm: 0 });
      const mask = doubted(drawn, [line]);
      expect(openCuts(mask, painted(drawn, line, halfPx, reach, rgb).sheet, nowhere)).toBe(mask);
    }
  });

  it('a seam: one tape lies over another, lighter from there on', () => {
    for (const seed of seeds(count, 700)) {
      const drawn = drawStrip({ seed, paper: 'white', gapMm: 0 });
      const rgb = drawn.sheet.rgb.map((v, n) => {
        const k = Math.floor(n / 3);
        const [i, j] = [k % 320, Math.floor(k / 320)];
        return drawn.truth[k] && i > line.x + line.slope * (j - axis) ? Math.min(255, 1.5 * v) : v;
      });
      const mask = doubted(drawn, [line]);
      expect(openCuts(mask, { ...drawn.sheet, rgb }, nowhere)).toBe(mask);
    }
  });

  it('a neck of 1.6 mm between two nicks that show the paper', () => {
    for (const seed of seeds(count, 900)) {
      const drawn = drawStrip({ seed, paper: 'white', gapMm: 0 });
      const nicked = drawStrip({ seed, paper: 'white', gapMm: 0.8 });
      const at = 10 * nicked.gapAt[0];
      const keep = (k: number): boolean => Math.abs(Math.floor(k / 320) - axis) < 8;
      const rgb = nicked.sheet.rgb.map((v, n) => (keep(Math.floor(n / 3)) ? drawn.sheet.rgb[n] : v));
      const mask = doubted(drawn, [{ x: at, slope: gapSlopeOf(nicked) }]);
      const opened = openCuts(mask, { ...drawn.sheet, rgb }, nowhere);
      expect(isParted(opened)).toBe(false);
    }
  });
});

it('What something lies on, and what was not the net’s to see, is left alone', () => {
  const drawn = drawStrip({ seed: 41, paper: 'white', gapMm: 0.7 });
  const mask = doubted(drawn, [{ x: 10 * drawn.gapAt[0], slope: gapSlopeOf(drawn) }]);
  expect(openCuts(mask, drawn.sheet, nowhere).cuts).toHaveLength(1);
  expect(openCuts(mask, drawn.sheet, () => true)).toBe(mask);
  const classical = { ...mask, by: 'classical' as const };
  expect(openCuts(classical, drawn.sheet, nowhere)).toBe(classical);
});
