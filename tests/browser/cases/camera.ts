import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { phone, visitor } from '../stage.ts';

export function cameraCases(bench: () => Bench): void {
  test('takes a photograph from the live camera on a phone', async () => {
    const { stage } = bench();
    const context = await visitor(stage, phone);
    const page = await context.newPage();
    await page.goto(stage.url);
    await page.getByRole('button', { name: 'Use the camera here' }).click();
    // The film that stands in for the camera is a still: it is held as steady as can be.
    await page.getByText('Steady: take it').waitFor({ timeout: 30_000 });
    await page.getByRole('button', { name: 'Take it' }).click();
    await page.getByRole('button', { name: 'Square' }).and(page.locator('[aria-current=step]')).waitFor();
    const shown = page.getByAltText('The photograph').first();
    await shown.waitFor();
    const size = await shown.evaluate((image: HTMLImageElement) => [image.naturalWidth, image.naturalHeight]);
    expect(size).toEqual([960, 1280]);
    await context.close();
  });

  test('says what to do where there is no camera', async () => {
    const { stage } = bench();
    const context = await visitor(stage, phone);
    const page = await context.newPage();
    await page.addInitScript(() => {
      navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotAllowedError'));
    });
    await page.goto(stage.url);
    await page.getByRole('button', { name: 'Use the camera here' }).click();
    await page.getByText('The camera may not be used here').waitFor();
    await page.getByRole('button', { name: 'Close the camera' }).click();
    await page.getByRole('heading', { name: 'Photograph the open base' }).waitFor();
    await context.close();
  });
}
