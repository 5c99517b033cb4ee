import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { complaintsOfAxe } from '../axe.ts';
import { long } from '../../long.ts';
import type { Bench } from '../page.test.ts';
import { desktop, openStep, phone } from '../stage.ts';

const steps = ['Shoot', 'Square', 'Copper', 'Parts', 'Verdict', 'Plan', 'Record', 'Class'];

/** Opens a step by its place in the head, whatever it is called. */
async function openNth(page: Page, place: number): Promise<void> {
  await page.getByRole('navigation').getByRole('button').nth(place).click();
}

async function speak(page: Page, language: string): Promise<void> {
  await openNth(page, 0);
  await page.locator('#language').selectOption(language);
  await page.locator(`html[lang=${language}]`).waitFor();
}

/** What sticks out of the screen, where it can be scrolled sideways. */
function tooWide(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    if (document.documentElement.scrollWidth <= innerWidth) return [];
    const wide = [...document.querySelectorAll('body *')].filter(
      (each) => each.getBoundingClientRect().right > innerWidth + 0.5,
    );
    return wide.map(
      ({ tagName, className, textContent }) => `${tagName}.${String(className)} ${textContent}`,
    );
  });
}

/** Controls that the foot hides while they have the focus (WCAG 2.2, 2.4.11). */
function hiddenByFoot(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const foot = document.querySelector('.foot');
    const controls = document.querySelectorAll<HTMLElement>(
      'main :is(button, input, select, textarea, a[href])',
    );
    return [...controls].flatMap((each) => {
      each.focus({ focusVisible: true } as FocusOptions);
      const [a, b] = [each.getBoundingClientRect(), foot?.getBoundingClientRect()];
      const hidden = document.activeElement === each && b && a.height > 0 && a.top >= b.top;
      return hidden ? [each.textContent || each.outerHTML.slice(0, 80)] : [];
    });
  });
}

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
    for (const [language, sizes] of [
      ['en', ['100%', '200%']],
      ['de', ['200%']],
      ...(long ? ([['fr', ['200%']]] as const) : []),
    ] as const) {
      if (language !== 'en') await speak(page, language);
      for (const text of sizes) {
        await page.evaluate((size) => (document.documentElement.style.fontSize = size), text);
        for (const [i, step] of steps.entries()) {
          await openNth(page, i);
          await page.getByRole('heading', { level: 1 }).waitFor();
          expect([step, language, text, await tooWide(page)]).toEqual([step, language, text, []]);
          if (text === '100%') expect([step, await hiddenByFoot(page)]).toEqual([step, []]);
        }
      }
    }
    await page.evaluate(() => (document.documentElement.style.fontSize = ''));
    await page.setViewportSize(desktop);
  });
}
