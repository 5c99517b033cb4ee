import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import type { Browser } from 'playwright-core';
import { build, defaultClientConditions, preview, type PreviewServer } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { contentPolicy } from '../../src/bench/contentPolicy.ts';
import { planesOf } from '../../src/engine/planes.ts';
import { startPlayedGpu } from '../browser/chrome.ts';
import type { Question } from './gpu/protocol.ts';

const side = 128;

let folder: string;
let server: PreviewServer;
let browser: Browser;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'foilproof-gpu-'));
  const outDir = join(folder, 'dist');
  // As for the page's own tests: built for makers, and served with the page's own policy.
  const surroundings = process.env.NODE_ENV;
  process.env.NODE_ENV = 'production';
  await build({
    configFile: false,
    root: 'tests/engine/gpu',
    publicDir: '../../../public',
    base: './',
    plugins: [contentPolicy()],
    resolve: { conditions: ['onnxruntime-web-use-extern-wasm', ...defaultClientConditions] },
    worker: { format: 'es' },
    build: { outDir, target: 'es2022' },
    logLevel: 'error',
  });
  process.env.NODE_ENV = surroundings;
  server = await preview({
    configFile: false,
    plugins: [contentPolicy()],
    build: { outDir },
    preview: { port: 0, host: '127.0.0.1' },
    logLevel: 'error',
  });
  browser = await startPlayedGpu();
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** A part of a photograph with a strip and paper, about 8 px/mm. */
async function crop(): Promise<Question> {
  const { data } = await sharp('fixtures/gap-1.2.jpg')
    .extract({ left: 600, top: 900, width: side, height: side })
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const planes = planesOf(
    { width: side, height: side, rgb: data },
    { x: 0, y: 0, width: side, height: side },
  );
  return { planes: [...planes], side };
}

test('by WebGPU the nets say what they say by WebAssembly, and so they do when the device is lost; under the page’s own policy', async ({
  skip,
}) => {
  const page = await browser.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
  await page.goto(server.resolvedUrls?.local[0] ?? '');
  const told = await page.evaluate((question) => window.compare(question), await crop());
  if ('none' in told) return skip(told.none);
  if ('failed' in told) throw new Error(told.failed);
  expect(told.unasked).toBe(false);
  expect(told.taken).toBe(true);
  expect(told.asked).toBe(1);
  expect(told.apart).toBeLessThan(0.01);
  expect(told.apartOnceLost).toBe(0);
  expect(told.askedOnceLost).toBe(0);
  expect(told.alike).toBeGreaterThanOrEqual(0.999);
  expect(told.filled).toBeGreaterThan(0.1);
  expect(told.filled).toBeLessThan(0.9);
  expect(complaints).toEqual([]);
});
