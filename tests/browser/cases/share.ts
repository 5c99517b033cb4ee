import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { parseCard } from '../../../src/card/index.ts';
import type { Bench } from '../page.test.ts';
import { labelled } from '../labelled.ts';
import { cardFile, checkMs, openStep, verdict } from '../stage.ts';

interface Handed {
  name: string;
  type: string;
  text: string;
}

/** Two names changed over, one between two lamps, the tag of another plan, and a cell of another kind than the card's. */
const printed = [
  { text: 'B2', at: [13.6, 29] },
  { text: 'B1', at: [25.6, 29] },
  { text: 'B3', at: [48.3, 29] },
  { text: 'FP 105x148 CHKL', at: [3, 146] },
  { text: 'CR2025', at: [21.2, 133] },
] as const;

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
    const buffer = await sharp(await labelled('gap-and-reversed', printed))
      .rotate(-90)
      .resize(1800)
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

  test('proposes what is written on that sheet, takes it at a tap, and asks where a name lies between two lamps', async () => {
    const { handset: page } = bench();
    await openStep(page, 'Parts');
    await page.getByRole('button', { name: 'Read the labels' }).click();
    const written = page.getByRole('region', { name: 'Written on the sheet' });
    await written.getByRole('button', { name: 'Read again' }).waitFor({ timeout: checkMs });
    const said = await written.innerText();
    expect(said).toContain('Printed for another plan: FP 105x148 CHKL.');
    expect(said).toMatch(/Which lamp is B3\?/);
    expect(said).toMatch(/read \d+ % sure/);
    for (const lamp of ['B3', 'B4'])
      await written.getByRole('button', { name: `Lamp ${lamp}`, exact: true }).waitFor();
    await written.getByRole('button', { name: 'The cell is marked CR2025: take that, + face up' }).click();
    await page.getByText('CR2025, + face up', { exact: true }).waitFor();
    await written.getByRole('button', { name: 'Call all 2 lamps by their labels' }).click();
    // What was taken is proposed no more; what was asked still is.
    await written.getByText('3 labels agree with the card.').waitFor();
    expect(await written.getByRole('button', { name: /^Call/ }).count()).toBe(0);
    const plus = (name: string) => page.getByRole('button', { name: new RegExp(`^Lamp ${name} `) });
    expect(await plus('B2').innerText()).toContain('+ at 20.0, 24.4');
    expect(await written.getByText('Which lamp is B3?').count()).toBe(1);
  });
}
