import { afterAll, expect, test } from 'vitest';
import { printPlan } from '../../../src/plan/index.ts';
import { fontsInNode } from '../../../src/record/pdf/fontsInNode.ts';
import { measureIn } from '../../../src/words/lengths.ts';
import { smallCard } from '../built/layCard.ts';
import { greyAt, readPart, readText } from './readPage.ts';

afterAll(() => measureIn('mm'));

/** Letter paper, mm. @source ANSI Y14.1, size A: 8.5 x 11 in of 25.4 mm */
const letterMm = 11 * 25.4;

test('a plan in inches is measured by a bar of two and cut by inches', async () => {
  measureIn('inch');
  const pdf = await printPlan(smallCard(), {
    paper: 'letter',
    fonts: await fontsInNode(),
    made: new Date(0),
  });
  const part = await readPart(pdf, 1, 300, { x: 8, y: letterMm - 17, width: 56, height: 6 });
  const row = Math.round(1.6 * part.pxPerMm);
  const dark = Array.from({ length: part.width }, (_, x) => x).filter((x) => greyAt(part, x, row) < 128);
  const [first, last] = [dark[0], dark[dark.length - 1]];
  expect(Math.abs((last - first) / part.pxPerMm - 50.8)).toBeLessThan(0.15);
  const said = (await readText(pdf)).pages.join(' ');
  expect(said).toContain('2 in. If it measures otherwise');
  expect(said).toMatch(/0\.2 in wide: [\d.]+ in to cut, [\d.]+ in off the roll/);
  expect(said).toMatch(/In all [\d.]+ ft off the roll/);
  // The cautions call cells by their size in mm, as their makers do.
  expect(said).not.toMatch(/\d mm\b(?! lithium cell)/);
});
