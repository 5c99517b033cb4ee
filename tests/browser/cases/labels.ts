import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { checkMs, openStep } from '../stage.ts';

export function readLabelsCase(bench: () => Bench): void {
  test('reads the sheet when asked, fetching the reader only then, from its own origin', async () => {
    const { page } = bench();
    const asked: string[] = [];
    page.context().on('request', (request) => {
      const file = /ocr-[\d.]+\/(.*)$/.exec(request.url())?.[1];
      if (file) asked.push(file);
    });
    await openStep(page, 'Parts');
    const read = page.getByRole('button', { name: 'Read the labels' });
    await read.waitFor();
    expect(asked).toEqual([]);
    await read.click();
    await page.getByRole('button', { name: 'Read again' }).waitFor({ timeout: checkMs });
    expect(asked).toContain('eng.traineddata.gz');
    // The demo's sheet has pencil lines and no print: nothing may be proposed from them.
    expect(await page.getByRole('button', { name: /^Call lamp/ }).count()).toBe(0);
  });
}
