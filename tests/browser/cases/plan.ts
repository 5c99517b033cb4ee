import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { drawnFront, drawnSketch } from '../drawnSheets.ts';
import { openStep, photo, verdict, visitor } from '../stage.ts';
import { onSheet } from './parts.ts';

/** Step Plan with a card of its own, nothing photographed, from the blank sheet on. */
export function drawPlan(bench: () => Bench): void {
  let page: Page;
  beforeAll(async () => {
    const { stage } = bench();
    page = await (await visitor(stage)).newPage();
    await page.goto(stage.url);
    await openStep(page, 'Plan');
    await page.getByRole('heading', { name: 'Draw the plan' }).waitFor();
  });
  afterAll(() => page.context().close());

  const click = async (x: number, y: number) => {
    const at = await onSheet(page, x, y);
    await page.mouse.click(at.x, at.y);
  };
  const drag = async (from: [number, number], to: [number, number]) => {
    const [a, b] = [await onSheet(page, ...from), await onSheet(page, ...to)];
    await page.mouse.move(a.x, a.y);
    await page.mouse.down();
    await page.mouse.move((a.x + b.x) / 2, (a.y + b.y) / 2, { steps: 3 });
    await page.mouse.move(b.x, b.y, { steps: 3 });
    await page.mouse.up();
  };
  const tool = (name: string) => page.getByLabel(name, { exact: true }).check();
  const strips = () => page.getByRole('region', { name: 'Strips, in the order of laying' });
  const places = async () => {
    const fields = strips().locator('.plan-place input');
    const values = await fields.evaluateAll((all) =>
      all.map((each) => Number((each as HTMLInputElement).value)),
    );
    return values.map((x, k) => [x, values[k + 1]]).filter((_, k) => k % 2 === 0);
  };

  test('lays parts and a strip by taps: it begins on the pad, folds at right angles, and is of the pad’s net', async () => {
    await tool('Cell');
    await click(25, 125);
    await tool('Lamp');
    await click(60, 50);
    await click(60, 55);
    await tool('Strip');
    await click(60.6, 49.3);
    await page.getByText('settled on L1+').waitFor();
    await click(60.4, 20.2);
    await page.getByText('settled on a fold angle').waitFor();
    await click(20, 20.6);
    await page.getByRole('button', { name: 'Finish strip' }).click();
    await strips().getByText('Places along it').click();
    const [a, b, c] = await places();
    expect(Math.hypot(a[0] - 60, a[1] - 50)).toBeLessThan(0.1);
    expect(b[0]).toBeCloseTo(a[0], 2);
    expect(c[1]).toBeCloseTo(b[1], 2);
    expect(await strips().getByLabel('Net').inputValue()).toBe('plus');
  });

  test('drags a corner, and the strips beside it stay on fold angles', async () => {
    await drag([20, 20.2], [30, 23]);
    const [, b, c] = await places();
    expect(c[0]).toBeGreaterThan(26);
    const turn = (Math.atan2(c[1] - b[1], c[0] - b[0]) * 180) / Math.PI;
    expect(Math.abs(turn / 45 - Math.round(turn / 45))).toBeLessThan(0.01);
    await page.getByRole('button', { name: 'Undo' }).click();
  });

  test('says where nets cross, lays the patch it suggests, and is content', async () => {
    await tool('Strip');
    await strips().getByRole('button', { name: /S1/ }).click();
    await page.getByLabel('Net').fill('minus');
    await click(45, 12);
    await click(45, 34);
    await click(45, 34.2);
    const crossing = page.getByText('plus and minus cross here');
    await crossing.waitFor();
    await page.getByRole('button', { name: 'Lay a patch' }).click();
    await crossing.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: /Patch K1/ }).click();
    expect(await page.getByLabel('S1', { exact: true }).isChecked()).toBe(true);
  });

  test('takes a suggested route that the check has nothing against but what nothing feeds', async () => {
    await page.getByRole('button', { name: 'Suggest a route' }).click();
    await page.getByText(/strips, .* of tape, .* no crossing/).waitFor();
    await page.getByRole('button', { name: 'Take it' }).click();
    await strips().getByText('plus to').first().waitFor();
    await page.getByText('Checking…').waitFor({ state: 'detached' });
    // What was said of the plan before stands until the new check has begun.
    const said = async () => {
      const findings = await page.locator('.plan-finding summary').allTextContents();
      return findings.filter((each) => /short|bridge|close|reversed|off its strip/i.test(each));
    };
    await expect.poll(said).toEqual([]);
  });

  test('prints it as a PDF', async () => {
    await page.getByLabel('Paper').selectOption('letter');
    const waiting = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Make the PDF' }).click();
    const bytes = readFileSync(await (await waiting).path());
    expect(bytes.subarray(0, 5).toString()).toBe('%PDF-');
    expect(bytes.length).toBeGreaterThan(10_000);
    await page.getByText('plan.pdf is made.').waitFor();
  });

  test('lays artwork beneath, scales it by a known distance, and keeps it', async () => {
    const art = page.locator('img.layer');
    await page.getByText('Artwork beneath').click();
    await page.getByLabel('Choose a picture of the front').setInputFiles(photo);
    await art.waitFor();
    const before = await art.evaluate((each) => each.getBoundingClientRect().width);
    await page.getByRole('button', { name: 'Scale it by two places' }).click();
    await click(20, 40);
    await click(60, 40);
    await page.getByLabel('Their distance, mm').fill('60');
    await page.getByRole('button', { name: 'Scale it', exact: true }).click();
    await expect
      .poll(async () => (await art.evaluate((each) => each.getBoundingClientRect().width)) / before)
      .toBeCloseTo(1.5, 1);
    await page.getByRole('button', { name: 'Place it by its corners' }).click();
    await page.getByText('Tap the top-left corner of the front in the picture.').waitFor();
    for (const [x, y] of [
      [10, 10],
      [95, 12],
      [93, 140],
      [8, 138],
    ])
      await click(x, y);
    const laid = await art.getAttribute('style');
    await page.getByRole('radio', { name: 'Artwork', exact: true }).check({ force: true });
    await page.getByRole('button', { name: 'Bottom-right corner of the artwork' }).focus();
    await page.keyboard.press('Shift+ArrowLeft');
    await expect.poll(() => art.getAttribute('style')).not.toBe(laid);
    const place = await art.getAttribute('style');
    await page.waitForTimeout(600);
    await page.reload();
    await art.waitFor();
    expect(await art.getAttribute('style')).toBe(place);
    await page.getByRole('button', { name: 'Take the picture away' }).click();
    await art.waitFor({ state: 'detached' });
  });

  test('measures a punched front from a photograph of its back', async () => {
    // The lamp's middle lies at 60, 52.5 on the base; the hole is punched 2 mm to the right of it.
    const file = await drawnFront({ width: 105, height: 148 }, [[62, 52.5]]);
    await page.getByLabel('Choose that photograph').setInputFiles(file);
    const line = await page.getByText(/^L1: the hole misses it by/).textContent({ timeout: 120_000 });
    expect(line).toMatch(/by (1\.[89]|2\.[0-2]) mm, too far right/);
  });

  test('traces a sketch, shows it first, and leaves it on wish', async () => {
    const file = await drawnSketch({ width: 105, height: 148 }, [
      [
        [20, 30],
        [80, 30],
        [80, 90],
      ],
      [
        [20, 60],
        [50, 60],
      ],
    ]);
    await page.getByLabel('Trace a photograph of a sketch').setInputFiles(file);
    await page.getByText(/strips traced/).waitFor({ timeout: 120_000 });
    expect(await page.locator('.tape.proposed').count()).toBeGreaterThan(1);
    await page.getByRole('button', { name: 'Leave it' }).click();
    expect(await page.locator('.tape.proposed').count()).toBe(0);
  });

  test('draws and deletes a strip by keyboard alone', async () => {
    const sheet = page.getByRole('application', { name: 'The plan on the base, to scale' });
    const count = () => strips().getByRole('listitem').count();
    const before = await count();
    await page.getByLabel('Move and pick').focus();
    await page.keyboard.press('ArrowRight');
    await page.getByText('Tap where the strip begins.').waitFor();
    await sheet.focus();
    for (const key of ['Shift+ArrowUp', 'Enter', 'Shift+ArrowRight', 'Shift+ArrowRight', 'Enter', 'Enter'])
      await page.keyboard.press(key);
    expect(await count()).toBe(before + 1);
    await page.keyboard.press('Delete');
    expect(await count()).toBe(before);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Escape');
    await page.getByText('Tap where the strip begins.').waitFor();
  });
}

/** The demo's build over its plan, on the page that the other cases share. */
export function compareBuild(bench: () => Bench): void {
  test('lays the build over its plan: progress, wipe, blink', async () => {
    const { page } = bench();
    await verdict(page);
    await openStep(page, 'Plan');
    await page
      .getByText(/\d+ of 14 strips laid/)
      .first()
      .waitFor();
    const wipe = page.getByLabel('Photograph shown from the left up to');
    await wipe.fill('0.5');
    expect(await page.locator('canvas.layer').getAttribute('style')).toMatch(/inset/);
    const tape = page.locator('.tape.planned');
    expect(await tape.count()).toBe(14);
    await page.locator('main').focus();
    await page.keyboard.down('b');
    expect(await tape.count()).toBe(0);
    await page.keyboard.up('b');
    expect(await tape.count()).toBe(14);
    await wipe.fill('1');
  });
}
