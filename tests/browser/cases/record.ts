import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { parseCard } from '../../../src/card/index.ts';
import type { Bench } from '../page.test.ts';
import { openStep, phone } from '../stage.ts';

async function made(page: Page, name: string): Promise<{ name: string; bytes: Buffer }> {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name, exact: true }).click();
  const download = await coming;
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

export function recordCases(bench: () => Bench): void {
  test('exports the marked picture, at the scale of the sheet', async () => {
    const { page } = bench();
    await openStep(page, 'Record');
    const { name, bytes } = await made(page, 'Picture with marks (PNG)');
    expect(name).toBe('harbour-night.png');
    const { format, width, height } = await sharp(bytes).metadata();
    // A6 (ISO 216: 105 x 148 mm) at 10 px/mm, with margins for the numbers.
    expect(format).toBe('png');
    expect(width).toBeGreaterThan(1050);
    expect(height).toBeGreaterThan(1480);
  });

  test('exports a record that needs nothing else and carries the cautions', async () => {
    const { bytes } = await made(bench().page, 'Record with cautions (HTML)');
    const page = bytes.toString('utf8');
    expect(page).toContain('Harbour Night');
    expect(page).toContain('Coin cells can kill when swallowed');
    expect(page).toContain('base64');
    expect(page).not.toMatch(/<script|src="http|href="http/);

    // Opened by whoever it was handed to, on a phone too: its own policy refuses nothing of it, nothing runs off the screen.
    const reader = await bench().page.context().newPage();
    await reader.setViewportSize(phone);
    await reader.setContent(page);
    expect(
      await reader.locator('figcaption', { hasText: /^the base, harbour-night\.jpg, .*\d{4}$/ }).count(),
    ).toBe(1);
    expect(await reader.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      phone.width,
    );
    const sheets = await reader.evaluate(() =>
      [...document.querySelectorAll('figure')].map((each) => each.getBoundingClientRect().height > 40),
    );
    expect(sheets.length).toBeGreaterThan(4);
    expect(sheets).not.toContain(false);
    await reader.close();
  });

  test('saves the card with its photograph, and opens it again as it was', async () => {
    const { page } = bench();
    const { name, bytes } = await made(page, 'Card file with the photograph');
    const card = parseCard(bytes.toString('utf8'), name);
    expect(card.lamps).toHaveLength(8);
    expect(card.photos.map((each) => each.name)).toEqual(['harbour-night.jpg']);
    const photo = Buffer.from(card.photos[0].base64 ?? '', 'base64');
    expect(photo.equals(readFileSync('fixtures/gap-and-reversed.jpg'))).toBe(true);
    const bare = await made(page, 'Card file without pictures');
    expect(parseCard(bare.bytes.toString('utf8'), bare.name).photos).toEqual([]);
  });
}
