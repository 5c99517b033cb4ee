import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { openStep } from '../stage.ts';

const beams = ['B1', 'B2', 'B3', 'B4', 'B5'];
const windows = ['W1', 'W2', 'W3'];

/** Gives lamps another colour in step Parts. */
export async function colour(page: Page, lamps: readonly string[], colour: string): Promise<void> {
  await openStep(page, 'Parts');
  for (const lamp of lamps) {
    await page.locator('.part-list').getByText(`Lamp ${lamp}`, { exact: true }).click();
    const line = page.locator('.part-list li.open');
    await line.getByLabel('Colour').selectOption(colour);
    await line.locator('.part-head').click();
  }
}

/** What the lamp strip says with everything pressed: each lamp's look and mA, and the lines below. */
export async function story(page: Page): Promise<{ lamps: Record<string, number>; lines: string }> {
  await openStep(page, 'Verdict');
  const strip = page.locator('.power');
  await strip.getByRole('combobox', { name: 'State' }).selectOption('everything pressed');
  await strip.getByText('What to expect').waitFor();
  const labels = await strip
    .locator('.lamp-row li')
    .evaluateAll((rows) => rows.map((row) => row.getAttribute('aria-label') ?? ''));
  const lamps = Object.fromEntries(
    labels.map((label) => [label.split(',')[0], Number(/([\d.]+) mA/.exec(label)?.[1] ?? 0)]),
  );
  return { lamps, lines: (await strip.textContent()) ?? '' };
}

/** Currents of a card are told apart as the handbook values of forward voltage have it: red about 2 V, white about 3 V. */
export function tellPower(bench: () => Bench): void {
  test('an all-white, an all-red and a mixed card tell different stories', async () => {
    const { page } = bench();
    const all = [...beams, ...windows];
    await colour(page, all, 'white');
    const white = await story(page);
    await colour(page, all, 'red');
    const red = await story(page);
    await colour(page, beams, 'white');
    const mixed = await story(page);
    const lit = ({ lamps }: typeof white) => all.filter((id) => lamps[id] > 0);
    expect(lit(white).length).toBeGreaterThan(4);
    for (const id of lit(white)) expect(red.lamps[id]).toBeGreaterThan(1.5 * white.lamps[id]);
    expect(white.lines).not.toMatch(/rob/);
    expect(red.lines).not.toMatch(/rob/);
    expect(mixed.lines).toMatch(/rob B/);
    for (const id of beams) expect(mixed.lamps[id]).toBeLessThanOrEqual(0.25 * white.lamps[id]);
  });
}
