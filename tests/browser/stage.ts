import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { build, preview } from 'vite';
import { startChrome } from './chrome.ts';
import { fakeCamera } from './fakeCamera.ts';

/** The built page on a server of its own, and one browser for all cases. */
export interface Stage {
  url: string;
  browser: Browser;
  /** The folder that is served. */
  outDir: string;
  /** Whatever the page's console complained of. */
  complaints: string[];
  close(): Promise<void>;
}

export const desktop = { width: 1280, height: 860 };
export const phone = { width: 360, height: 740 };
export const photo = 'fixtures/gap-and-reversed.jpg';
export const cardFile = 'fixtures/gap-and-reversed.card.json';
/** A whole check by a machine that has other work too, ms. */
export const checkMs = 180_000;

export async function setStage(): Promise<Stage> {
  const folder = mkdtempSync(join(tmpdir(), 'foilproof-page-'));
  const outDir = join(folder, 'dist');
  // The test runner calls its own surroundings 'test', under which another page would be built than makers get.
  const surroundings = process.env.NODE_ENV;
  process.env.NODE_ENV = 'production';
  await build({ build: { outDir, emptyOutDir: true }, logLevel: 'error' });
  process.env.NODE_ENV = surroundings;
  const server = await preview({
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1' },
    logLevel: 'error',
  });
  const browser = await startChrome(await fakeCamera(photo, folder));
  return {
    url: server.resolvedUrls?.local[0] ?? '',
    browser,
    outDir,
    complaints: [],
    async close() {
      await browser.close();
      await server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** A fresh visitor: nothing kept, every request that leaves the origin refused and noted. */
export async function visitor(stage: Stage, viewport = desktop): Promise<BrowserContext> {
  const context = await stage.browser.newContext({
    viewport,
    reducedMotion: 'reduce',
    permissions: ['camera'],
    acceptDownloads: true,
    // Each visitor would keep the whole page; the case of the page without a network lets one do so.
    serviceWorkers: 'block',
  });
  await context.route(
    (url) => url.protocol.startsWith('http') && !url.href.startsWith(stage.url),
    (route) => {
      stage.complaints.push(`request to ${route.request().url()}`);
      return route.abort();
    },
  );
  context.on('page', (page) => listen(page, stage));
  return context;
}

function listen(page: Page, { complaints }: Stage): void {
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  // What a worker's policy refuses is told in the worker alone.
  page.on('worker', (worker) => void worker.evaluate(tellRefusals).catch(() => undefined));
}

/** Runs in a worker: whatever its policy refuses goes to the console. */
function tellRefusals(): void {
  self.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI }) =>
    console.error(`a worker was refused ${effectiveDirective} ${blockedURI}`),
  );
}

/** Opens a step by its name in the running head. */
export async function openStep(page: Page, name: string): Promise<void> {
  await page.getByRole('navigation').getByRole('button', { name }).click();
}

/** Waits until no stage is under way and the verdict stands at the foot. */
export async function verdict(page: Page): Promise<string> {
  const line = page.locator('.foot .verdict');
  await line.waitFor({ timeout: checkMs });
  return (await line.textContent()) ?? '';
}
