import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

declare const axe: { run(options: object): Promise<AxeResults> };

/** What axe-core has against the page as it stands, one line a finding. */
export async function complaintsOfAxe(page: Page): Promise<string[]> {
  // The page's policy allows no inline script; what the debugger runs is not bound by it.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(source);
  const found = await page.evaluate((tags) => axe.run({ runOnly: { type: 'tag', values: tags } }), levels);
  return found.violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`,
  );
}
