import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';

/** @source our own bar: under 200 kB of compressed script before the first paint, and none of the engine */
const bar = 200_000;

export function firstPaint(bench: () => Bench): void {
  test('paints before the engine comes, from under 200 kB of compressed script', async () => {
    const { stage, page } = bench();
    const bodies = new Map<string, Promise<Buffer>>();
    page.on('response', (response) => {
      if (/\.(js|wasm|onnx)$/.test(response.url())) bodies.set(response.url(), response.body());
    });
    await page.goto(stage.url);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.waitForFunction(() => performance.getEntriesByName('first-contentful-paint').length > 0);
    const before = await page.evaluate(() => {
      const paint = performance.getEntriesByName('first-contentful-paint')[0].startTime;
      const entries = performance.getEntriesByType('resource') as PerformanceResourceTiming[];
      return entries.filter(({ startTime }) => startTime < paint).map(({ name }) => name);
    });
    let sum = 0;
    for (const name of before.filter((each) => each.endsWith('.js'))) {
      sum += gzipSync((await bodies.get(name)) ?? Buffer.alloc(0)).length;
    }
    expect(before.filter((name) => /worker|\.wasm|\.onnx/.test(name))).toEqual([]);
    expect(sum).toBeGreaterThan(20_000);
    expect(sum).toBeLessThan(bar);
  });
}
