import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { parseCard } from '../../../src/card/index.ts';
import type { Bench } from '../page.test.ts';
import { cardFile, checkMs, openStep, photo, verdict } from '../stage.ts';

interface Handed {
  name: string;
  type: string;
  text: string;
}

export function shareCases(bench: () => Bench): void {
  test('goes from the camera to a verdict in four taps on a card with a plan, at 360 px', async () => {
    const { stage, handset: page } = bench();
    await page.goto(stage.url);
    await page.getByLabel('Open a card file').setInputFiles(cardFile);
    await expect.poll(() => page.getByLabel('Title of the card').inputValue()).not.toBe('');
    await page.evaluate(() => {
      const page = window as unknown as { taps: number };
      page.taps = 0;
      addEventListener('click', ({ isTrusted }) => isTrusted && page.taps++, true);
    });
    await page.getByRole('button', { name: 'Use the camera here' }).click();
    await page.getByRole('button', { name: 'Take it' }).click();
    // The foot has the verdict on every step: no further tap is needed to read it.
    expect(await verdict(page)).toMatch(/^(Hold|Clear)/);
    await openStep(page, 'Verdict');
    await page.getByRole('heading', { name: 'Proof marks' }).waitFor();
    expect(await page.evaluate(() => (window as unknown as { taps: number }).taps)).toBeLessThanOrEqual(4);
  });

  test('hands the record to the share sheet, and saves it where there is none', async () => {
    const { page } = bench();
    await openStep(page, 'Record');
    await page.evaluate(() => {
      navigator.canShare = () => true;
      navigator.share = async (data) => {
        const [file] = data?.files ?? [];
        const handed = { name: file.name, type: file.type, text: await file.text() };
        Object.assign(window, { handed });
      };
    });
    await page.getByRole('button', { name: 'Share the record' }).click();
    await page.getByText('is handed on.').waitFor();
    const handed = await page.evaluate(() => (window as unknown as { handed: Handed }).handed);
    expect(handed.name).toMatch(/\.html$/);
    expect(handed.type).toBe('text/html');
    expect(handed.text).toContain('Coin cells can kill when swallowed');
    await page.evaluate(() => (navigator.canShare = () => false));
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Share the record' }).click();
    expect((await coming).suggestedFilename()).toBe(handed.name);
  });

  test('a saved card tells neither where nor by what its photograph was taken; its orientation stays', async () => {
    const { handset: page } = bench();
    await openStep(page, 'Shoot');
    const buffer = await sharp(photo)
      .rotate(-90)
      .resize(800)
      .withExif({ IFD0: { Make: 'A camera' }, IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '47/1 22/1 0/1' } })
      .withMetadata({ orientation: 6 })
      .jpeg()
      .toBuffer();
    expect(buffer.includes('A camera')).toBe(true);
    await page
      .getByLabel('Choose a photograph')
      .setInputFiles({ name: 'at-home.jpg', mimeType: 'image/jpeg', buffer });
    await page.getByRole('heading', { name: 'Lay the corners on the base' }).waitFor({ timeout: checkMs });
    await openStep(page, 'Record');
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Card file with the photograph' }).click();
    const text = readFileSync(await (await coming).path(), 'utf8');
    const saved = Buffer.from(parseCard(text, 'saved').photos[0].base64 ?? '', 'base64');
    const { exif, orientation } = await sharp(saved).metadata();
    expect(saved.includes('A camera')).toBe(false);
    expect(exif?.length).toBeLessThanOrEqual(32);
    expect(orientation).toBe(6);
  });
}
