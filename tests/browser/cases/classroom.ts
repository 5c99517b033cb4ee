import sharp from 'sharp';
import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { checkMs, openStep } from '../stage.ts';

export function classroomCases(bench: () => Bench): void {
  test('checks many cards of one plan, past a broken one, with a table, the commonest fault and slips', async () => {
    const { page } = bench();
    await openStep(page, 'Class');
    const files = await Promise.all(
      ['sound', 'gap-1.2'].map(async (name) => ({
        name: `${name}.jpg`,
        mimeType: 'image/jpeg',
        buffer: await sharp(`fixtures/${name}.jpg`).resize(900).jpeg({ quality: 90 }).toBuffer(),
      })),
    );
    const broken = { name: 'broken.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') };
    await page.getByLabel('Choose photographs').setInputFiles([broken, ...files]);
    await page.getByText('3 of 3 checked').waitFor({ timeout: checkMs });
    const table = page.getByRole('table', { name: 'Cards and their verdicts' });
    const row = (name: string) => table.getByRole('row', { name: new RegExp(name) }).textContent();
    expect(await row('broken')).toMatch(/Could not be checked.*not a photograph/);
    // The generator planted a gap in one and nothing in the other: fixtures/*.json.
    expect(await row('gap-1')).toMatch(/Hold/);
    await page.getByText(/^Commonest fault: .+, on \d of 3 cards\.$/).waitFor();
    const slips = page.locator('.slip');
    expect(await slips.first().isVisible()).toBe(false);
    await page.emulateMedia({ media: 'print' });
    expect(await slips.count()).toBe(3);
    expect(await slips.last().isVisible()).toBe(true);
    expect(await page.locator('.head').isVisible()).toBe(false);
    expect(await slips.last().textContent()).toMatch(/mm from the left/);
    await page.emulateMedia({ media: 'screen' });
    const rows = await table.getByRole('row').allTextContents();
    await page.reload();
    await openStep(page, 'Class');
    await page.getByText('3 of 3 checked').waitFor();
    expect(await table.getByRole('row').allTextContents()).toEqual(rows);
  });
}
