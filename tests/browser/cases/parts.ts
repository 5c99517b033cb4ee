import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { cardFile, openStep, verdict } from '../stage.ts';

/** Screen place of a place in mm: the sheet lies centred in its box with a margin of 30 px. */
export async function onSheet(page: Page, x: number, y: number): Promise<{ x: number; y: number }> {
  const box = await page.locator('.surface-box').boundingBox();
  if (!box) throw new Error('no sheet');
  const scale = Math.min((box.width - 60) / 105, (box.height - 60) / 148);
  return {
    x: box.x + box.width / 2 + (x - 105 / 2) * scale,
    y: box.y + box.height / 2 + (y - 148 / 2) * scale,
  };
}

export function layParts(bench: () => Bench): void {
  test('lays a lamp by two taps, flips, colours, drags and deletes it, all undone again', async () => {
    const { page } = bench();
    await openStep(page, 'Parts');
    await page.getByLabel('Lamp', { exact: true }).check();
    const [plus, minus] = [await onSheet(page, 50, 60), await onSheet(page, 50, 68)];
    await page.mouse.click(plus.x, plus.y);
    await page.mouse.click(minus.x, minus.y);
    const line = page.locator('.part-list li.open');
    await line.getByText('Lamp L1').waitFor();
    const head = line.locator('.part-head');
    expect(await head.textContent()).toMatch(/\+ at (49\.[5-9]|50\.[0-4]), (59\.[5-9]|60\.[0-4])/);
    await line.getByRole('button', { name: 'Swap + and −' }).click();
    expect(await head.textContent()).toMatch(/\+ at (49\.[5-9]|50\.[0-4]), (67\.[5-9]|68\.[0-4])/);
    await line.getByLabel('Colour').selectOption('red');
    expect(await head.textContent()).toContain('red');
    // The margin may have scrolled the page meanwhile.
    const [end, to] = [await onSheet(page, 50, 68), await onSheet(page, 60, 75)];
    await page.mouse.move(end.x, end.y);
    await page.mouse.down();
    await page.mouse.move(to.x - 3, to.y - 3, { steps: 4 });
    await page.mouse.move(to.x, to.y, { steps: 2 });
    await page.mouse.up();
    await expect.poll(() => head.textContent()).toMatch(/\+ at (59\.[5-9]|60\.[0-4]), (74\.[5-9]|75\.[0-4])/);
    await line.getByRole('button', { name: 'Delete' }).click();
    expect(await page.getByText('Lamp L1').count()).toBe(0);
    for (let i = 0; i < 5; i++) await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.getByText('Lamp L1').count()).toBe(0);
    await verdict(page);
  });

  test('proposes what the photograph shows and the card lacks; one tap or key takes it', async () => {
    const { page } = bench();
    const lines = page.locator('.part-list > li');
    const before = await lines.count();
    expect(await page.getByText('Seen in the photograph').count()).toBe(0);
    await page.locator('.part-list').getByText('Lamp B3', { exact: true }).click();
    await page.locator('.part-list li.open').getByRole('button', { name: 'Delete' }).click();
    const take = page.getByRole('button', { name: /^Take the lamp at/ });
    await take.focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => lines.count()).toBe(before);
    expect(await take.count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByLabel('Move and pick').check();
    const card = JSON.parse(readFileSync(cardFile, 'utf8')) as {
      lamps: { id: string; plus: number[]; minus: number[] }[];
    };
    const { plus, minus } = card.lamps.find(({ id }) => id === 'B3')!;
    const at = await onSheet(page, (plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2);
    await page.mouse.click(at.x, at.y);
    await expect.poll(() => lines.count()).toBe(before);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await verdict(page);
  });

  test('lays the cell and a contact with both sides, with face, kind, stroke and order', async () => {
    const { page } = bench();
    await page.getByLabel('Cell', { exact: true }).check();
    const at = await onSheet(page, 30, 130);
    await page.mouse.click(at.x, at.y);
    const line = page.locator('.part-list li.open');
    await line.getByLabel('Kind').selectOption('CR2016');
    await line.getByLabel('Face up').selectOption('-');
    expect(await line.locator('.part-head').textContent()).toContain('CR2016, - face up');
    await page.getByLabel('Contact', { exact: true }).check();
    const [from, to] = [await onSheet(page, 45, 45), await onSheet(page, 49, 52)];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 5 });
    await page.mouse.up();
    await line.getByText('Contact C6').waitFor();
    await line.getByLabel('Number in the stroke').fill('3');
    await line.getByLabel('Number in the stroke').press('Enter');
    expect(await line.locator('.part-head').textContent()).toContain('stroked, number 3');
    for (let i = 0; i < 5; i++) await page.getByRole('button', { name: 'Undo' }).click();
    expect(await page.getByText('Contact C6').count()).toBe(0);
    expect(await page.getByText('CR2032, + face up').count()).toBe(1);
  });
}
