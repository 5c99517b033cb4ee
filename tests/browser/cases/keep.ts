import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { openStep, verdict } from '../stage.ts';

export function keepCases(bench: () => Bench): void {
  test('loses nothing when the page is reloaded', async () => {
    const { stage, page } = bench();
    const before = await verdict(page);
    await openStep(page, 'Record');
    // Kept twice at once: the second writing begins before the first has ended, as on a slow device.
    await page.getByLabel('Title of the card').evaluate((field: HTMLInputElement) => {
      for (const title of ['Harbour Night, again', 'Harbour Night, second try']) {
        Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(field, title);
        field.dispatchEvent(new Event('input', { bubbles: true }));
        document.dispatchEvent(new Event('visibilitychange'));
      }
    });
    await page.getByLabel('Note for the record').fill('mend beam 1');
    await page.waitForTimeout(600);
    expect(await page.getByText('This card was changed in another tab.').count()).toBe(0);
    await page.goto(stage.url);
    expect(await verdict(page)).toBe(before);
    expect(await page.getByLabel('Title of the card').inputValue()).toBe('Harbour Night, second try');
    expect(await page.getByLabel('Note for the record').inputValue()).toBe('mend beam 1');
  });

  test('tells a second tab that the card was changed in the first', async () => {
    const { stage, page } = bench();
    const second = await page.context().newPage();
    await second.goto(stage.url);
    const title = second.getByLabel('Title of the card');
    await expect.poll(() => title.inputValue()).toBe('Harbour Night, second try');
    await page.getByLabel('Title of the card').fill('Changed in the first tab');
    await second.getByText('This card was changed in another tab.').waitFor();
    await second.getByRole('button', { name: 'Take the other tab’s' }).click();
    await expect.poll(() => title.inputValue()).toBe('Changed in the first tab');
    await second.close();
  });

  test('says so when the device has no room, and goes on', async () => {
    const { page } = bench();
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
    });
    await page.getByLabel('Title of the card').fill('No room for this');
    await page.getByText('This device has no room left').waitFor();
    await openStep(page, 'Verdict');
    await page.getByRole('heading', { name: 'Proof marks' }).waitFor();
  });
}
