import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { checkMs, openStep, verdict } from '../stage.ts';

interface Truth {
  base: { corners_px: [number, number][] };
}

export function dragCorners(bench: () => Bench): void {
  const names = ['Top-left', 'Top-right', 'Bottom-right', 'Bottom-left'];

  test('finds the base, and its corners follow hand and keys to a tenth of a pixel', async () => {
    const { page } = bench();
    await openStep(page, 'Square');
    const truth = JSON.parse(readFileSync('fixtures/gap-and-reversed.json', 'utf8')) as Truth;
    const corner = (i: number) => page.getByRole('button', { name: `${names[i]} corner` });
    const place = async (i: number) => {
      const label = (await corner(i).getAttribute('aria-label')) ?? '';
      return (label.match(/[\d.]+/g) ?? []).map(Number);
    };
    await corner(0).waitFor();
    for (let i = 0; i < 4; i++) {
      const [x, y] = await place(i);
      const [tx, ty] = truth.base.corners_px[i];
      // Within 1 mm of the generator's own corners: the photograph shows some 9 px a mm.
      expect(Math.hypot(x - tx, y - ty)).toBeLessThan(9);
    }
    const [x0, y0] = await place(0);
    const box = await corner(0).boundingBox();
    if (!box) throw new Error('no handle');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2 + 25, box.y + box.height / 2 + 10, { steps: 4 });
    await page.locator('.loupe').waitFor();
    await page.mouse.up();
    await page.getByText('The corners are where you put them.').waitFor({ timeout: checkMs });
    const [x1, y1] = await place(0);
    expect(x1 - x0).toBeGreaterThan(20);
    await corner(0).focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Alt+ArrowDown');
    await page.keyboard.press('Shift+ArrowLeft');
    const [x2, y2] = await place(0);
    expect(x2).toBeCloseTo(x1 - 9, 1);
    expect(y2).toBeCloseTo(y1 + 0.1, 1);
    await page.waitForTimeout(500);
    await page.getByRole('button', { name: 'Find it by itself' }).click();
    await page.getByText(/The base was found by itself/).waitFor({ timeout: checkMs });
    await verdict(page);
    const [x3, y3] = await place(0);
    expect(Math.hypot(x3 - x0, y3 - y0)).toBeLessThan(1);
  });

  test('does not doubt a right size by the cell, and says that no card lies beside', async () => {
    const { page } = bench();
    // The cell in the picture is a CR2032, 19.7 to 20.0 mm across by IEC 60086-2.
    expect(await page.getByText(/the scale is off by/).count()).toBe(0);
    await page.getByRole('button', { name: 'Measure by a bank card beside it' }).click();
    await page.getByText(/No card of bank-card size/).waitFor({ timeout: checkMs });
  });
}
