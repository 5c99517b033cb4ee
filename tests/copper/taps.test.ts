import { expect, test } from 'vitest';
import { seeCopper } from '../../src/copper/index.ts';
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
