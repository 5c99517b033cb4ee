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
