import { expect, test } from 'vitest';
import { complaintsOfAxe } from '../axe.ts';
import type { Bench } from '../page.test.ts';
import { desktop, openStep, phone } from '../stage.ts';

const steps = ['Shoot', 'Square', 'Copper', 'Parts', 'Verdict', 'Plan', 'Record', 'Class'];

export function everySize(bench: () => Bench): void {
  for (const [name, size, scheme] of [
    ['desktop', desktop, 'dark'],
    ['phone', phone, 'light'],
  ] as const) {
    test(`axe finds nothing on any step, ${name}, ${scheme}`, async () => {
      const { page } = bench();
      await page.setViewportSize(size);
      await page.emulateMedia({ colorScheme: scheme });
      for (const step of steps) {
        await openStep(page, step);
        await page.getByRole('heading', { level: 1 }).waitFor();
        expect([step, ...(await complaintsOfAxe(page))]).toEqual([step]);
      }
    });
  }

  test('nothing runs off a 360 px screen, at 100 % nor with text at 200 % (WCAG 2.2, 1.4.4 and 1.4.10)', async () => {
    const { page } = bench();
    for (const text of ['100%', '200%']) {
      await page.evaluate((size) => (document.documentElement.style.fontSize = size), text);
      for (const step of steps) {
        await openStep(page, step);
        await page.getByRole('heading', { level: 1 }).waitFor();
        const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        expect([step, text, Math.max(0, over)]).toEqual([step, text, 0]);
      }
    }
    await page.evaluate(() => (document.documentElement.style.fontSize = ''));
    await page.setViewportSize(desktop);
  });
}
