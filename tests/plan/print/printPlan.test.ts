import { beforeAll, describe, expect, it } from 'vitest';
import type { Card } from '../../../src/card/index.ts';
import { cutLamps } from '../../../src/check/cutLamps.ts';
import { nets } from '../../../src/check/nets.ts';
import { seeCopper } from '../../../src/copper/index.ts';
import { openLineReader } from '../../../src/engine/ocr.ts';
import { readerPlacesNode } from '../../../src/engine/ocrPlacesNode.ts';
import type { Point } from '../../../src/geometry/index.ts';
import { comparePlan, printPlan, readTag, sheetTag } from '../../../src/plan/index.ts';
import { besideLamp } from '../../../src/plan/print/besideLamp.ts';
import { tilesOf } from '../../../src/plan/print/page.ts';
import { templatesOf } from '../../../src/plan/print/templates.ts';
import { distanceToRibbon } from '../../../src/plan/strip/ribbon.ts';
import type { Ribbon } from '../../../src/plan/strip/ribbon.ts';
import { fontsInNode } from '../../../src/record/pdf/fontsInNode.ts';
import type { SquaredSheet } from '../../../src/sheet/index.ts';
import { trace, type Traced } from '../../../src/trace/index.ts';
import { planned, smallCard } from '../built/layCard.ts';
import type { ReadPart } from './readPage.ts';
import { greyAt, readPart, readText } from './readPage.ts';

const A4 = { width: 210, height: 297 };
/** Where the sheet's corner lies on an A4 page: in the middle across, below the heading. */
const sheetAt = (card: Card): Point => [(A4.width - card.base.width_mm) / 2, 34];

const card = smallCard();
let bytes: Uint8Array;

async function printed(of: Card, paper: 'a4' | 'letter' = 'a4'): Promise<Uint8Array> {
  return printPlan(of, { paper, fonts: await fontsInNode(), made: new Date(0) });
}

beforeAll(async () => {
  bytes = await printed(card);
}, 120_000);

describe('the print read back at 600 dots an inch', () => {
  it.each(['a4', 'letter'] as const)('has a check bar of 50 mm to a tenth on %s', async (paper) => {
    const height = paper === 'a4' ? A4.height : 279.4;
    const pdf = paper === 'a4' ? bytes : await printed(card, paper);
    const part = await readPart(pdf, 1, 600, { x: 8, y: height - 17, width: 56, height: 6 });
    // The two ticks are the only columns dark above the bar itself.
    const row = Math.round(1.6 * part.pxPerMm);
    const dark = Array.from({ length: part.width }, (_, x) => x).filter((x) => greyAt(part, x, row) < 128);
    const middle = dark.reduce((sum, x) => sum + x, 0) / dark.length;
    const mean = (xs: number[]) => xs.reduce((sum, x) => sum + x, 0) / xs.length;
    const apart = mean(dark.filter((x) => x > middle)) - mean(dark.filter((x) => x < middle));
    expect(apart / part.pxPerMm).toBeGreaterThan(49.9);
    expect(apart / part.pxPerMm).toBeLessThan(50.1);
  });

  it('has every strip where the plan says, and paper elsewhere', async () => {
    const [x, y] = sheetAt(card);
    const part = await readPart(bytes, 1, 600, {
      x,
      y,
      width: card.base.width_mm,
      height: card.base.height_mm,
    });
    const ribbons = [...planned(card).values()];
    let asked = 0;
    let wrong = 0;
    for (let py = 2.25; py < card.base.height_mm - 5; py += 0.5) {
      for (let px = 2.25; px < card.base.width_mm - 2; px += 0.5) {
        const place: Point = [px, py];
        if (underPrintedMark(place)) continue;
        const gap = Math.min(...ribbons.map((r) => distanceToRibbon(place, r)));
        const depth = Math.min(
          ...ribbons.map((r) => distanceToRibbon(place, { ...r, widthMm: r.widthMm - 0.8 })),
        );
        if (gap < 0.25 && depth > 0) continue;
        asked++;
        const grey = greyAt(part, Math.round(px * part.pxPerMm), Math.round(py * part.pxPerMm));
        if (gap === 0 ? grey > 245 : grey < 250) wrong++;
      }
    }
    expect(asked).toBeGreaterThan(10_000);
    expect(wrong).toBe(0);
  });

  it('has the punch template’s back mirrored', async () => {
    const [x, y] = sheetAt(card);
    const at = async (page: number, px: number) => {
      const part = await readPart(bytes, page, 600, {
        x: x + px - 0.5,
        y: y + 37 - 0.5,
        width: 1,
        height: 1,
      });
      let least = 255;
      for (let k = 0; k < part.width; k++)
        least = Math.min(least, greyAt(part, k, Math.round(part.height / 4)));
      return least;
    };
    for (const hole of [25, 50, 75]) {
      expect(await at(2, hole), `front, ${hole} mm`).toBeLessThan(200);
      expect(await at(3, card.base.width_mm - hole), `back, ${hole} mm`).toBeLessThan(200);
    }
    expect(await at(3, 25)).toBeGreaterThan(240);
  });
});

/** Lamps' names and + stand beside them. */
const besides = templatesOf(card)[0].lamps.map((lamp) => besideLamp(templatesOf(card)[0], lamp));

/** Lamps, the cell and the order numbers are printed over the strips. */
const underPrintedMark = (place: Point) =>
  card.plan!.strips.some(
    ({ path: [a, b] }) => Math.hypot(place[0] - (a[0] + b[0]) / 2, place[1] - (a[1] + b[1]) / 2) < 2.3,
  ) ||
  besides.some(
    ({ name, plus = name }) =>
      (Math.abs(place[0] - name[0]) < 2.2 && Math.abs(place[1] - name[1]) < 1.6) ||
      Math.hypot(place[0] - plus[0], place[1] - plus[1]) < 1.5,
  ) ||
  card.lamps.some(({ plus, minus }) => distanceToRibbon(place, { path: [plus, minus], widthMm: 6 }) < 2) ||
  Math.abs(Math.hypot(place[0] - 12, place[1] - 37) - 10) < 0.5 ||
  Math.hypot(place[0] - 12, place[1] - 37) < 4;

describe('a flap', () => {
  const flapped = smallCard({
    flaps: [
      {
        id: 'F1',
        fold: [
          [105, 20],
          [105, 60],
        ],
        outline: [
          [105, 20],
          [125, 20],
          [125, 60],
          [105, 60],
        ],
        strips: [
          {
            id: 'bridge',
            width_mm: 5,
            path: [
              [110, 25],
              [122, 25],
            ],
          },
        ],
      },
    ],
  });

  it('is printed as its underside meets the base: mirrored about the fold', async () => {
    const flap = templatesOf(flapped).find(({ title }) => title.includes('F1'))!;
    expect(flap.strips[0].path).toEqual([
      [100, 25],
      [88, 25],
    ]);
    const pdf = await printed(flapped);
    const left = (A4.width - flap.width) / 2;
    const part = await readPart(pdf, 2, 600, { x: left, y: 34, width: flap.width, height: flap.height });
    const grey = (x: number, y: number) =>
      greyAt(part, Math.round((x - 85) * part.pxPerMm), Math.round((y - 20) * part.pxPerMm));
    expect(grey(90, 26.5)).toBeLessThan(245);
    expect(grey(103, 26.5)).toBeGreaterThan(250);
  });
});

describe('the document', () => {
  it('is tagged, and its words are found by a search', async () => {
    const { pages, tagged } = await readText(bytes);
    expect(tagged).toBe(true);
    expect(pages[0]).toMatch(/FP 105x74 [A-Z0-9]{4}/);
    expect(pages.join(' ')).toMatch(/Cut list.*Parts.*Building, with a test after each step.*Cautions/s);
    expect(pages.join(' ')).toContain('plus rail');
  });

  it('is tiled when larger than the paper, the tiles covering the sheet with a lap', async () => {
    const large = smallCard({ base: { width_mm: 297, height_mm: 420 } });
    const [base] = templatesOf(large);
    const { tiles, columns, rows } = tilesOf(base, 'a4');
    expect(tiles).toHaveLength(columns * rows);
    expect(columns).toBeGreaterThan(1);
    const last = tiles[tiles.length - 1];
    expect(last.x + 190).toBeGreaterThanOrEqual(297 + 16);
    expect(tiles[1].x).toBeLessThan(190);
  });

  it('is the same, byte for byte, for the same card and time', async () => {
    expect(Buffer.compare(await printed(card), bytes)).toBe(0);
  });
});

describe('print, lay, photograph, compare', () => {
  /** The printed base at 10 px a mm with tape laid on it; the copper stage sees it as it would a squared photograph. */
  function photographed(page: ReadPart, tape: Iterable<Ribbon>, built = card) {
    const { width, height, rgba } = page;
    const rgb = new Uint8Array(width * height * 3);
    const ribbons = [...tape];
    for (let k = 0; k < width * height; k++) {
      const place: Point = [((k % width) + 0.5) / 10, (Math.floor(k / width) + 0.5) / 10];
      const taped = ribbons.some((r) => distanceToRibbon(place, r) === 0);
      for (let c = 0; c < 3; c++) rgb[3 * k + c] = taped ? [184, 115, 70][c] : (rgba[4 * k + c] * 240) / 255;
    }
    const sheet: SquaredSheet = {
      width,
      height,
      pxPerMm: 10,
      originMm: [0, 0],
      baseMm: { width: card.base.width_mm, height: card.base.height_mm },
      rgb,
      toPhoto: [10, 0, 0, 0, 10, 0, 0, 0, 1],
      photoPxPerMm: 10,
    };
    return trace(cutLamps(seeCopper(sheet), built), sheet);
  }

  const compared = (traced: Traced) => comparePlan(traced, card);
  /** What the whole check tells of nets. */
  const told = (traced: Traced) =>
    nets(traced, card).netlist.findings.filter(({ kind }) => kind === 'gap' || kind === 'bridge');

  const page = async () => {
    const [x, y] = sheetAt(card);
    return readPart(bytes, 1, 254, { x, y, width: card.base.width_mm, height: card.base.height_mm });
  };

  it('gives no finding on a build as printed', async () => {
    const traced = photographed(await page(), planned(card).values());
    expect(compared(traced).findings).toEqual([]);
    expect(told(traced)).toEqual([]);
  });

  it('sees that what is only printed is not laid', async () => {
    const ribbons = planned(card);
    ribbons.delete('plus 3');
    const { findings } = compared(photographed(await page(), ribbons.values()));
    expect(findings.map((f) => [f.kind, f.facts.strip])).toEqual([['missing-strip', 'plus 3']]);
  });

  it('sees a strip laid beside its print', async () => {
    const ribbons = planned(card);
    const { path, widthMm } = ribbons.get('minus 1')!;
    ribbons.set('minus 1', { path: path.map(([x, y]): Point => [x + 3, y]), widthMm });
    const { findings } = compared(photographed(await page(), ribbons.values()));
    expect(findings.map((f) => [f.kind, f.facts.strip])).toEqual([['shifted-strip', 'minus 1']]);
  });

  it('sees a lamp laid beside its print, and the light hole that it would miss', async () => {
    const [first, ...rest] = card.lamps;
    const beside = ([x, y]: Point): [number, number] => [x + 2.4, y];
    const moved = { ...first, plus: beside(first.plus), minus: beside(first.minus) };
    const built = { ...card, lamps: [moved, ...rest], plan: { ...card.plan!, lamps: card.lamps } };
    const { findings } = comparePlan(photographed(await page(), planned(card).values(), built), built);
    expect(findings.map((f) => [f.kind, f.lamps])).toEqual([['shifted-lamp', [first.id]]]);
    expect(findings[0].sizeMm).toBeCloseTo(2.4, 1);
    expect(findings[0].facts).toMatchObject({ holeMissMm: expect.closeTo(2.4, 1) });
  });

  it('sees copper that no plan has', async () => {
    const stray: Ribbon = {
      path: [
        [60, 25],
        [66, 25],
        [66, 45],
      ],
      widthMm: 4,
    };
    const { findings } = compared(photographed(await page(), [...planned(card).values(), stray]));
    expect(findings.map((f) => f.kind)).toEqual(['extra-strip']);
  });

  it('sees two nets joined', async () => {
    const joining: Ribbon = {
      path: [
        [88, 10],
        [88, 64],
      ],
      widthMm: 4,
    };
    const findings = told(photographed(await page(), [...planned(card).values(), joining]));
    expect(findings.map((f) => f.kind)).toContain('bridge');
  });

  it('sees a strip torn apart', async () => {
    const ribbons = planned(card);
    const { path, widthMm } = ribbons.get('plus rail')!;
    const [a, b] = path;
    ribbons.set('plus rail', { path: [a, [36, 10]], widthMm });
    ribbons.set('rest of it', { path: [[38, 10], b], widthMm });
    const findings = told(photographed(await page(), ribbons.values()));
    const { at } = findings.find(({ kind }) => kind === 'gap')!;

    expect(Math.hypot(at[0] - 37, at[1] - 10)).toBeLessThan(3);
  });
});

describe('a sheet larger than the paper', () => {
  it('shows the same strip on both tiles that share it, at the same place of the sheet', async () => {
    const large = smallCard({ base: { width_mm: 297, height_mm: 200 } });
    const [base] = templatesOf(large);
    const { tiles, columns, rows } = tilesOf(base, 'a4');
    expect([columns, rows]).toEqual([2, 1]);
    const pdf = await printed({
      ...large,
      plan: {
        ...large.plan!,
        strips: [
          {
            id: 'over the lap',
            net: 'plus',
            width_mm: 5,
            path: [
              [140, 100],
              [200, 100],
            ],
            on: 'base',
          },
        ],
      },
    });
    // Page margin and the rim for registration crosses, then the heading above.
    const corner: Point = [18, 34];
    // A row across the strip in the lap: 95 to 105 mm down at 172 mm from the sheet's left.
    const edges = await Promise.all(
      tiles.map(async (tile, k) => {
        const part = await readPart(pdf, k + 1, 600, {
          x: corner[0] - tile.x + 172,
          y: corner[1] + 95,
          width: 1,
          height: 10,
        });
        const inked = Array.from({ length: part.height }, (_, y) => y).filter(
          (y) => greyAt(part, Math.round(part.width / 2), y) < 245,
        );
        return [inked[0] / part.pxPerMm, inked[inked.length - 1] / part.pxPerMm];
      }),
    );
    for (const [top, bottom] of edges) {
      expect(top).toBeCloseTo(2.5, 0);
      expect(bottom - top).toBeGreaterThan(4.8);
      expect(bottom - top).toBeLessThan(5.2);
    }
    expect(Math.abs(edges[0][0] - edges[1][0])).toBeLessThan(0.1);
  });
});

it.each([0, 1, 2])(
  'the tag is read off a picture of the print by the recogniser (card %i)',
  async (more) => {
    const tagged = smallCard();
    tagged.plan!.strips[0].width_mm += more / 10;
    const [x, y] = sheetAt(tagged);
    const { width, height, rgba } = await readPart(await printed(tagged), 1, 300, {
      x: x + 1,
      y: y + tagged.base.height_mm - 3.6,
      width: 32,
      height: 3.4,
    });
    const grey = Uint8Array.from({ length: width * height }, (_, k) => rgba[4 * k + 1]);
    const reader = await openLineReader(readerPlacesNode());
    const { text } = await reader.read({ width, height, grey });
    await reader.close();
    expect(readTag(text), text).toEqual(readTag(sheetTag(tagged)));
  },
  120_000,
);
