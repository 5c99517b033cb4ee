import type { Locator } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { checkMs, openStep } from '../stage.ts';
import { onSheet } from './parts.ts';

export function brushCopper(bench: () => Bench): void {
  test('mends copper by the brush, by hand and by keys, with undo and redo', async () => {
    const { page } = bench();
    await openStep(page, 'Copper');
    const figures = page.locator('.margin-side p[role=status]');
    await figures.waitFor();
    const before = (await figures.textContent()) ?? '';
    expect(before).toMatch(/\d+ pieces of copper, \d+ mm², nothing mended by hand/);
    await page.getByLabel('Brush copper on').check();
    const [from, to] = [await onSheet(page, 40, 8), await onSheet(page, 60, 8)];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 8 });
    await page.mouse.up();
    await figures.getByText('1 stroke by hand').waitFor({ timeout: checkMs });
    await expect.poll(() => figures.textContent(), { timeout: checkMs }).not.toContain(before.split(',')[1]);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => figures.textContent(), { timeout: checkMs }).toBe(before);
    await page.getByRole('button', { name: 'Redo' }).click();
    await figures.getByText('1 stroke by hand').waitFor();
    await page.keyboard.press('Control+z');
    await expect.poll(() => figures.textContent(), { timeout: checkMs }).toBe(before);
    await page.getByRole('application').focus();
    for (const key of ['Space', 'ArrowRight', 'ArrowRight', 'Space']) await page.keyboard.press(key);
    await figures.getByText('1 stroke by hand').waitFor({ timeout: checkMs });
    await page.keyboard.press('Control+z');
    await expect.poll(() => figures.textContent(), { timeout: checkMs }).toBe(before);
  });
}

export function tapCopper(bench: () => Bench): void {
  test('a tap closes an opening, another opens a strip, and each is taken back', async () => {
    const { page } = bench();
    await openStep(page, 'Copper');
    const figures = page.locator('.margin-side p[role=status]');
    await figures.waitFor();
    const before = await settled(figures);
    const pieces = Number(/^\d+/.exec(before)?.[0]);
    const tap = async (what: string, x: number, y: number): Promise<void> => {
      await page.getByLabel(what).check();
      const place = await onSheet(page, x, y);
      await page.mouse.click(place.x, place.y);
    };
    const told = (count: number) =>
      expect.poll(() => figures.textContent(), { timeout: checkMs }).toMatch(new RegExp(`^${count} pieces`));
    await tap('Tap: this is tape', 20, 88);
    await told(pieces - 1);
    await page.getByText('1 tap of 12.').waitFor();
    await page.getByRole('button', { name: 'Forget the taps' }).click();
    await expect.poll(() => figures.textContent(), { timeout: checkMs }).toBe(before);
    await tap('Tap: this is paper', 32, 70);
    await told(pieces + 1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => figures.textContent(), { timeout: checkMs }).toBe(before);
  });
}

/** What a line says once it has stood for a while: a check that an earlier test began may still change it. */
async function settled(line: Locator): Promise<string> {
  let [before, now]: (string | null)[] = [null, await line.textContent()];
  while (before !== now) {
    await new Promise((resolve) => setTimeout(resolve, 4000));
    [before, now] = [now, await line.textContent()];
  }
  return now ?? '';
}
