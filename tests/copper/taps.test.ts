import { expect, test } from 'vitest';
import { seeCopper, settleTaps } from '../../src/copper/index.ts';
import { loadOpenCv } from '../../src/engine/openCv.ts';
import { drawStrip } from '../trace/creasedStrip.ts';

/** A square tile of tape, 9 x 9 mm of one colour: no strip, so shape alone does not tell it. */
function tile() {
  const { sheet } = drawStrip({ seed: 4, paper: 'white', gapMm: 0 });
  const rgb = sheet.rgb.slice();
  for (let j = 0; j < sheet.height; j++) {
    for (let i = 0; i < sheet.width; i++) {
      const on = i >= 120 && i < 200 && j >= 20 && j < 100;
      const k = 3 * (j * sheet.width + i);
      rgb.set(on ? [150, 105, 85] : [225, 225, 223], k);
    }
  }
  return { ...sheet, rgb };
}

test('what no shape tells a tap does: copper tapped is copper, and a tap on paper takes it back', () => {
  const sheet = tile();
  const middle = 60 * sheet.width + 160;
  expect(seeCopper(sheet).filled[middle]).toBe(0);
  expect(seeCopper(sheet, { teachCopper: [[16, 6]] }).filled[middle]).toBe(1);
  expect(seeCopper(sheet, { teachCopper: [[16, 6]], teachPaper: [[16, 4]] }).filled[middle]).toBe(0);
});

/** Nets that see the strip of `tile` and pass over its tile, which lies in columns 120 to 199 and rows 20 to 99. */
function blindTo(sheet: ReturnType<typeof tile>, copper: Uint8Array) {
  const seen = copper.map((v, k) => {
    const [i, j] = [k % sheet.width, Math.floor(k / sheet.width)];
    return i >= 115 && i < 205 && j >= 15 && j < 105 ? 0 : 255 * v;
  });
  return { copper: seen, lamp: new Uint8Array(seen.length), cell: new Uint8Array(seen.length) };
}

test('beside the nets a tap brings in what they pass over and leaves the rest; a tap on paper takes it out', async () => {
  const sheet = tile();
  const learned = blindTo(sheet, seeCopper(sheet).filled);
  const untaught = seeCopper(sheet, { learned });
  const tapped = await settleTaps(loadOpenCv, sheet, untaught, learned, { copper: [[16, 6]], paper: [] });
  const inTile = (mask: Uint8Array) =>
    mask.filter(
      (v, k) =>
        v &&
        k % sheet.width >= 120 &&
        k % sheet.width < 200 &&
        k >= 20 * sheet.width &&
        k < 100 * sheet.width,
    ).length / 6400;
  expect(inTile(untaught.filled)).toBeLessThan(0.05);
  expect(inTile(tapped.filled)).toBeGreaterThan(0.95);
  const elsewhere =
    tapped.filled.filter((v, k) => v !== untaught.filled[k]).length - 6400 * inTile(tapped.filled);
  expect(elsewhere).toBeLessThan(0.02 * tapped.filled.length);
  const back = await settleTaps(loadOpenCv, sheet, tapped, learned, { copper: [], paper: [[16, 6]] });
  expect(inTile(back.filled)).toBeLessThan(0.05);
});

test('a tap whose colours run out into a region wider than tape changes nothing', async () => {
  const sheet = tile();
  const nothing = new Uint8Array(sheet.width * sheet.height);
  const learned = { copper: nothing, lamp: nothing, cell: nothing };
  const untaught = seeCopper(sheet, { learned });
  const tapped = await settleTaps(loadOpenCv, sheet, untaught, learned, { copper: [[16, 1]], paper: [] });
  expect(tapped.filled).toEqual(untaught.filled);
});
