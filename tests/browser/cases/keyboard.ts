import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { verdict } from '../stage.ts';

/** Tab until something with this name has the keyboard. The body, where it rests past the page's end, is not something: its text is the whole page's. */
async function tabTo(page: Page, name: RegExp, key = 'Tab'): Promise<void> {
  for (let i = 0; i < 80; i++) {
    await page.keyboard.press(key);
    const here = await page.evaluate(() => {
      const { activeElement: element, body } = document;
      if (element === body) return '';
      const label = element instanceof HTMLInputElement ? element.labels?.[0]?.textContent : undefined;
      return element?.getAttribute('aria-label') ?? label ?? element?.textContent ?? '';
    });
    if (name.test(here)) return;
  }
  throw new Error(`No way by Tab to ${String(name)}`);
}

export function keyboardAlone(bench: () => Bench): void {
  test('goes from the first page to the demo, a settled finding and the record by keyboard alone', async () => {
    const { stage, page } = bench();
    await page.goto(stage.url);
    await page.locator('body').focus();
    await tabTo(page, /Shoot$/);
    await page.keyboard.press('Enter');
    await page.getByText('Open the demo card').waitFor();
    await tabTo(page, /Open the demo card/);
    await page.keyboard.press('Enter');
    await page.waitForFunction(() => document.activeElement?.ariaLabel === 'Verdict');
    const before = await verdict(page);
    expect(before).toMatch(/^Hold \(\d+\)$/);
    await page.locator('.finding-head').first().waitFor();
    await tabTo(page, /holds the card/);
    await page.keyboard.press('Enter');
    await page.locator('.finding.open').getByLabel('Checked by hand').waitFor();
    await tabTo(page, /Checked by hand/);
    await page.keyboard.press('Space');
    await page.getByText('Checked by hand', { exact: true }).first().waitFor();
    expect(await verdict(page)).not.toBe(before);
    await page.locator('main').focus();
    await page.keyboard.press('Control+z');
    expect(await verdict(page)).toBe(before);
    await tabTo(page, /Record$/, 'Shift+Tab');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Record with cautions (HTML)' }).waitFor();
    await tabTo(page, /^Record with cautions \(HTML\)$/);
    const coming = page.waitForEvent('download');
    await page.keyboard.press('Enter');
    expect((await coming).suggestedFilename()).toBe('harbour-night.html');
  });

  test('lays a lamp by the cross-hair', async () => {
    const { page } = bench();
    await page.getByRole('navigation').getByRole('button', { name: 'Parts' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('application').waitFor();
    await tabTo(page, /Squared photograph with lamps/);
    const lamps = page.getByRole('list', { name: 'Parts on the sheet' }).getByText(/^Lamp /);
    const count = await lamps.count();
    await tabTo(page, /^Move and pick/);
    await page.keyboard.press('ArrowRight');
    await page.getByText('Tap the + end of a lamp.').waitFor();
    await tabTo(page, /Squared photograph with lamps/, 'Shift+Tab');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Alt+ArrowRight');
    await page.getByText('62.6 mm from the left, 73.0 mm from the top').waitFor();
    await page.keyboard.press('Enter');
    await page.getByText('Now tap its − end.').waitFor();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.getByRole('list', { name: 'Parts on the sheet' }).getByText('Lamp L1').waitFor();
    expect(await lamps.count()).toBe(count + 1);
    await page.keyboard.press('Control+z');
    expect(await lamps.count()).toBe(count);
  });
}
