import { readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { complaintsOfAxe } from '../axe.ts';
import type { Bench } from '../page.test.ts';
import { openStep, verdict } from '../stage.ts';

const folder = new URL('../../../fixtures/folded/', import.meta.url);

/** A folded card with its pictures within: the base as it is, as it was before the patch, and the flap opened flat. */
export async function foldedCard(name: string): Promise<string> {
  const card = JSON.parse(await readFile(new URL(`${name}.card.json`, folder), 'utf8'));
  for (const photo of card.photos) {
    photo.base64 = (await readFile(new URL(photo.name, folder))).toString('base64');
    if (photo.name === 'before.jpg') photo.before = 'K1';
  }
  const path = join(tmpdir(), `foilproof-${name}-${process.pid}.card.json`);
  await writeFile(path, JSON.stringify(card));
  return path;
}

export function foldFlaps(bench: () => Bench): void {
  test('lays the photographs of a folded card together, and tells the strip that lands beside its partner', async () => {
    const { handset: page } = bench();
    await openStep(page, 'Record');
    await page.locator('input[type=file][accept*=json]').setInputFiles(await foldedCard('strip-off'));
    expect(await verdict(page)).toMatch(/Hold/);
    await page.locator('.finding-head', { hasText: 'Missed contact' }).click();
    // The fixture's third strip was laid 1.5 mm beyond its partner.
    await page
      .getByText(/At C3 the flap's copper lands 1\.[3-7] mm below its partner/)
      .first()
      .waitFor();

    const slider = page.getByRole('slider', { name: 'How far flap F1 is closed' });
    await page.getByText(/^C1: overlap of \d+\.\d mm²/).waitFor();
    await page.getByText(/^C3: misses its partner by 1\.[3-7] mm, it lands below/).waitFor();
    await slider.focus();
    await page.keyboard.press('End');
    expect(await slider.getAttribute('aria-valuetext')).toBe('180 degrees');
    expect(await page.locator('.landing').count()).toBe(5);
    expect(await page.locator('.landing.missed').count()).toBe(1);
    await page.keyboard.press('Home');
    expect(await page.locator('.landing').count()).toBe(0);

    const picture = page.locator('.fold-picture');
    await picture.scrollIntoViewIfNeeded();
    const box = (await picture.boundingBox())!;
    // Base and flap are 198 mm high together, the fold 148 mm from the top: from the flap's far edge over the fold.
    const [x, scale] = [box.x + box.width / 2, box.height / 202];
    await page.mouse.move(x, box.y + 190 * scale);
    await page.mouse.down();
    await page.mouse.move(x, box.y + 150 * scale, { steps: 4 });
    await page.mouse.move(x, box.y + 112 * scale, { steps: 4 });
    await page.mouse.up();
    expect(Number(await slider.inputValue())).toBeGreaterThan(140);
    expect(await complaintsOfAxe(page)).toEqual([]);

    await openStep(page, 'Shoot');
    await page.getByText(/flap-off\.jpg: flap F1/).waitFor();
    await page.getByText(/Laid by the fold line, 0\.\d mm off/).waitFor();
    expect(await complaintsOfAxe(page)).toEqual([]);
    await page.getByRole('button', { name: 'Corners and fold line of flap-off.jpg' }).click();
    await page.getByRole('button', { name: /^First end of the fold/ }).waitFor();
    expect(await page.locator('button.corner').count()).toBe(6);
    const end = page.getByRole('group', { name: 'Second end of the fold' });
    expect(await end.getByLabel('from the left, mm').inputValue()).toBe('105');
    expect(await page.getByLabel('Height, mm').inputValue()).toBe('50');
    expect(await complaintsOfAxe(page)).toEqual([]);
    await page.getByRole('button', { name: 'Done' }).click();
    await page.close();
  });
}
