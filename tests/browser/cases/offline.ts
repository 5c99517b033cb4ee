import { appendFileSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Page } from 'playwright-core';
import { preview } from 'vite';
import { expect, test } from 'vitest';
import { gpuFileCount, gpuFiles } from '../../../src/engine/gpuFiles.ts';
import type { Bench } from '../page.test.ts';
import { checkMs, openStep, phone, photo, verdict } from '../stage.ts';

interface Manifest {
  icons: { src: string; sizes: string }[];
}

async function readLabels(page: Page): Promise<void> {
  await openStep(page, 'Parts');
  await page.getByRole('button', { name: 'Read the labels' }).click();
  await page.getByRole('button', { name: 'Read again' }).waitFor({ timeout: checkMs });
}

/** How many of the reader's files are kept on the device. */
async function keptOfReader(): Promise<number> {
  return (await (await caches.open('foilproof-reader')).keys()).length;
}

export function offlineCases(bench: () => Bench): void {
  test('a first visit fetches no runner that only some can use', () => {
    const { outDir } = bench().stage;
    const kept = readFileSync(join(outDir, 'sw.js'), 'utf8');
    const assets = readdirSync(join(outDir, 'assets'));
    const forFew = assets.filter((name) => gpuFiles.some((start) => name.startsWith(`${start}-`)));
    expect(forFew.length).toBe(gpuFileCount);
    for (const name of forFew) expect(kept).not.toContain(name);
    const { bytes } = JSON.parse(readFileSync(join(outDir, 'offline.json'), 'utf8')) as { bytes: number };
    expect(bytes).toBeLessThan(32e6);
  });

  test('installs, waits with what is newer until told, and works with its server gone', async () => {
    const { stage } = bench();
    const outDir = stage.outDir;
    const server = await preview({
      build: { outDir },
      preview: { port: 0, host: '127.0.0.1' },
      logLevel: 'error',
    });
    const url = server.resolvedUrls?.local[0] ?? '';
    const context = await stage.browser.newContext({ viewport: phone });
    const page = await context.newPage();
    await page.goto(url);
    const said = (await page.getByText(/up to \d+ MB are fetched once/).textContent()) ?? '';
    // The engine alone is some 20 MB; what is told must be of that order.
    expect(Number(/\d+/.exec(said)?.[0])).toBeGreaterThan(20);
    await page.getByText('works without a network.').waitFor({ timeout: checkMs });

    const devtools = await context.newCDPSession(page);
    const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
    // All that stands against it is that a test's visitor counts as a private window.
    expect(installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== 'in-incognito')).toEqual(
      [],
    );
    const { data = '{}', errors } = await devtools.send('Page.getAppManifest');
    expect(errors).toEqual([]);
    for (const { src, sizes } of (JSON.parse(data) as Manifest).icons) {
      const { width, height } = await sharp(await (await fetch(url + src)).arrayBuffer()).metadata();
      expect(`${width}x${height}`).toBe(sizes);
    }

    // The reader of labels comes with its first use, and stays.
    const buffer = await sharp(photo).resize(900).jpeg().toBuffer();
    await page
      .getByLabel('Choose a photograph')
      .setInputFiles({ name: 'small.jpg', mimeType: 'image/jpeg', buffer });
    await verdict(page);
    await readLabels(page);
    await expect.poll(() => page.evaluate(keptOfReader)).toBe(3);

    await openStep(page, 'Shoot');
    await page.getByLabel('Title of the card').fill('Kept through the newer page');
    appendFileSync(join(outDir, 'sw.js'), '\n// newer\n');
    await page.evaluate(async () => void (await navigator.serviceWorker.getRegistration())?.update());
    await page.getByText('A newer Foilproof is here').waitFor({ timeout: checkMs });
    expect(await page.getByLabel('Title of the card').inputValue()).toBe('Kept through the newer page');
    await page.waitForTimeout(400);
    await server.close();
    await expect(fetch(url)).rejects.toThrow();
    await Promise.all([page.waitForEvent('load'), page.getByRole('button', { name: 'Load it now' }).click()]);
    await expect
      .poll(() => page.getByLabel('Title of the card').inputValue())
      .toBe('Kept through the newer page');
    await verdict(page);
    await readLabels(page);
    await openStep(page, 'Shoot');
    await page.getByRole('link', { name: 'Open the demo card' }).click();
    expect(await verdict(page)).toMatch(/^Hold/);
    await context.close();
  });
}
