import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import sharp from 'sharp';
import { z } from 'zod';
import { cardFile, openStep, photo, setStage, visitor } from '../browser/stage.ts';

/** The whole check in the real page, the engine warm. */
export interface PageRun {
  megapixels: number;
  /** From the file chosen to the verdict at the foot, ms. */
  wholeMs: number;
  timings: Record<string, number>;
}

export interface PageBench {
  runs: PageRun[];
  /** Most memory that any renderer process (page and worker) held, MB; absent where the system does not tell. */
  peakMB?: number;
}

/** A maker takes at least so long to frame a photograph; the page makes its worker ready meanwhile. */
const framingMs = 6000;

/** Opens the card and its photograph at each size, the smallest twice so that the engine is warm. */
export async function inChromium(sizes: readonly number[]): Promise<PageBench> {
  const stage = await setStage();
  try {
    const page = await (await visitor(stage)).newPage();
    await page.goto(stage.url);
    await page.getByLabel('Open a card file').setInputFiles(cardFile);
    await page.waitForTimeout(framingMs);
    await check(page, await scaled(sizes[0]));
    const runs: PageRun[] = [];
    for (const megapixels of sizes)
      runs.push({ megapixels, ...(await check(page, await scaled(megapixels))) });
    return { runs, peakMB: await peakOfRenderers(stage.browser) };
  } finally {
    await stage.close();
  }
}

async function scaled(megapixels: number): Promise<Buffer> {
  const { width = 1, height = 1 } = await sharp(photo).metadata();
  const scale = Math.sqrt((megapixels * 1e6) / (width * height));
  return sharp(photo)
    .resize(Math.round(width * scale), Math.round(height * scale))
    .jpeg({ quality: 88 })
    .toBuffer();
}

const figures = z.object({ timings_ms: z.record(z.string(), z.number()) });

async function check(page: Page, buffer: Buffer): Promise<Omit<PageRun, 'megapixels'>> {
  await openStep(page, 'Shoot');
  const timed = page.evaluate(msToVerdict);
  const file = { name: 'bench.jpg', mimeType: 'image/jpeg', buffer };
  await page.getByLabel('Choose a photograph').setInputFiles(file);
  const wholeMs = await timed;
  await openStep(page, 'Record');
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Figures (JSON)' }).click();
  const { timings_ms } = figures.parse(JSON.parse(await readFile(await (await coming).path(), 'utf8')));
  return { wholeMs, timings: timings_ms };
}

/** Runs in the page: from the next file chosen until the verdict before has gone and a new one stands, ms. */
function msToVerdict(): Promise<number> {
  return new Promise((resolve) => {
    let begun = 0;
    let gone = document.querySelector('.foot .verdict') === null;
    document.addEventListener('change', () => (begun = performance.now()), { capture: true, once: true });
    const watch = new MutationObserver(() => {
      const stands = document.querySelector('.foot .verdict') !== null;
      gone ||= !stands;
      if (!begun || !gone || !stands) return;
      watch.disconnect();
      resolve(performance.now() - begun);
    });
    watch.observe(document.body, { childList: true, subtree: true });
  });
}

/** VmHWM of the browser's renderer processes, as Linux counts it. */
async function peakOfRenderers(browser: Browser): Promise<number | undefined> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  const renderers = processInfo.filter(({ type }) => type === 'renderer');
  const peaks = await Promise.all(renderers.map(({ id }) => peakOf(id)));
  const known = peaks.filter((peak) => peak !== undefined);
  return known.length > 0 ? Math.max(...known) : undefined;
}

async function peakOf(pid: number): Promise<number | undefined> {
  const status = await readFile(`/proc/${pid}/status`, 'utf8').catch(() => '');
  const kB = /VmHWM:\s+(\d+) kB/.exec(status)?.[1];
  return kB === undefined ? undefined : Number(kB) / 1024;
}
