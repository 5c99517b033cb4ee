import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';

/** What a page does when it tries what its policy forbids; each answer is the violated directive, or what got through. */
async function triesWhatIsForbidden(): Promise<string[]> {
  const refused: string[] = [];
  document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) =>
    refused.push(effectiveDirective),
  );
  const inline = document.createElement('script');
  inline.textContent = 'document.title = "ran"';
  document.head.append(inline);
  const style = document.createElement('style');
  style.textContent = 'body { display: none }';
  document.head.append(style);
  const frame = document.createElement('iframe');
  frame.src = 'https://elsewhere.example/';
  document.body.append(frame);
  const picture = new Image();
  picture.src = 'https://elsewhere.example/dot.png';
  const button = document.createElement('button');
  button.setAttribute('onclick', 'document.title = "ran"');
  button.click();
  await fetch('https://elsewhere.example/').catch(() => undefined);
  const kinds = () => [...new Set(refused)].sort();
  // On a busy machine the last of them is told late.
  for (let n = 0; n < 50 && kinds().length < 6; n++) await new Promise((resolve) => setTimeout(resolve, 100));
  return kinds().concat(document.title);
}

/** The same in a worker, where the check runs. */
async function triesInWorker(): Promise<string[]> {
  const refused: string[] = [];
  self.addEventListener('securitypolicyviolation', ({ effectiveDirective }) =>
    refused.push(effectiveDirective),
  );
  await fetch('https://elsewhere.example/').catch(() => undefined);
  await new Promise((resolve) => setTimeout(resolve, 200));
  return [...new Set(refused)].sort();
}

export function policyCases(bench: () => Bench): void {
  test('refuses inline script and style, and whatever lies elsewhere, by its own policy and the server’s', async () => {
    const { stage } = bench();
    const page = await (await stage.browser.newContext()).newPage();
    const response = await page.goto(stage.url);
    // Workers may share memory: HTML Living Standard, section 7.1.4.
    expect(await page.evaluate(() => crossOriginIsolated)).toBe(true);
    const header = response?.headers()['content-security-policy'] ?? '';
    const meta = await page.locator('meta[http-equiv=Content-Security-Policy]').getAttribute('content');
    for (const policy of [header, meta ?? '']) {
      expect(policy).toContain("default-src 'none'");
      expect(policy).not.toMatch(/unsafe-inline|[^-]unsafe-eval|\*|https?:/);
    }
    expect(await page.evaluate(triesWhatIsForbidden)).toEqual([
      'connect-src',
      'frame-src',
      'img-src',
      'script-src-attr',
      'script-src-elem',
      'style-src-elem',
      'Foilproof',
    ]);
    const worker = page.workers()[0] ?? (await page.waitForEvent('worker'));
    expect(await worker.evaluate(triesInWorker)).toEqual(['connect-src']);
    await page.context().close();
  });
}
