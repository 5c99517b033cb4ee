import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { photo, visitor } from '../stage.ts';

export function wrongFiles(bench: () => Bench): void {
  test('refuses what is no photograph with a sentence, and keeps the card', async () => {
    const { page } = bench();
    await page.getByLabel('Title of the card').fill('Kept through bad files');
    const dot = await sharp({ create: { width: 1, height: 1, channels: 3, background: 'white' } })
      .png()
      .toBuffer();
    const bad: [string, Buffer, RegExp][] = [
      ['empty.jpg', Buffer.alloc(0), /empty\.jpg is empty/],
      ['notes.jpg', Buffer.from('a shopping list'), /not a photograph/],
      ['cut.jpg', readFileSync(photo).subarray(0, 400), /breaks off|damaged|not a photograph/],
      ['dot.png', dot, /1 x 1 pixels/],
    ];
    for (const [name, buffer, sentence] of bad) {
      const mimeType = name.endsWith('png') ? 'image/png' : 'image/jpeg';
      await page.getByLabel('Choose a photograph').setInputFiles({ name, mimeType, buffer });
      await page.getByRole('alert').getByText(sentence).waitFor();
    }
    expect(await page.getByLabel('Title of the card').inputValue()).toBe('Kept through bad files');
  });

  test('refuses a wrong card file with the key that is wrong', async () => {
    const { page } = bench();
    const card = { format: 'foilproof/1', base: { width_mm: 105, height_mm: 148 }, lamsp: [] };
    const buffer = Buffer.from(JSON.stringify(card));
    const file = { name: 'misspelt.json', mimeType: 'application/json', buffer };
    await page.getByLabel('Open a card file').setInputFiles(file);
    await page.getByRole('alert').getByText('"lamsp"').waitFor();
    expect(await page.getByLabel('Title of the card').inputValue()).toBe('Kept through bad files');
  });

  test('takes a photograph that is dropped', async () => {
    const { stage } = bench();
    const context = await visitor(stage);
    const page = await context.newPage();
    await page.goto(stage.url);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.evaluate(async (base64) => {
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      const data = new DataTransfer();
      data.items.add(new File([bytes], 'dropped.jpg', { type: 'image/jpeg' }));
      dispatchEvent(new DragEvent('drop', { dataTransfer: data, cancelable: true }));
    }, readFileSync(photo).toString('base64'));
    await page.getByRole('button', { name: 'Square' }).and(page.locator('[aria-current=step]')).waitFor();
    await page.getByAltText('The photograph').first().waitFor();
    await context.close();
  });
}
