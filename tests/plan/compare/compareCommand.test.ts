import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { compareCommand } from '../../../src/cli/compare.ts';
import type { Bitmap } from '../../../src/plan/compare/index.ts';
import { drawPair } from './drawPair.ts';

let folder = '';
const file = (name: string) => join(folder, name);

async function write(name: string, { width, height, on }: Bitmap, conductor: 0 | 255): Promise<string> {
  const data = Buffer.from(on.map((v) => (v ? conductor : 255 - conductor)));
  await sharp(data, { raw: { width, height, channels: 1 } })
    .png()
    .toFile(file(name));
  return file(name);
}

async function run(args: string[]) {
  const lines: string[] = [];
  const status = await compareCommand(args, (line) => lines.push(line));
  return { status, text: lines.join('\n') };
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'compare-'));
});
afterAll(() => rm(folder, { recursive: true }));

describe('foilproof compare', () => {
  it('ends with 0 and says so where the nets are the same, light conductor on dark found by itself', async () => {
    const pair = drawPair(31, []);
    const built = await write('a.png', pair.built, 255);
    const plan = await write('b.png', pair.plan, 255);
    const { status, text } = await run(['--built', built, '--plan', plan]);
    expect(status).toBe(0);
    expect(text).toContain('light side');
    expect(text).toContain('Same nets');
  });

  it('ends with 1 on an open and gives its place in px and mm', async () => {
    const pair = drawPair(32, ['open']);
    const built = await write('c.png', pair.built, 0);
    const plan = await write('d.png', pair.plan, 0);
    const { status, text } = await run(['--built', built, '--plan', plan, '--px-per-mm', '10', '--json']);
    const said = JSON.parse(text);
    expect(status).toBe(1);
    expect(said.conductor).toEqual({ built: 'dark', plan: 'dark', guessed: true });
    expect(said.faults).toHaveLength(1);
    expect(said.faults[0]).toMatchObject({ kind: 'open', changes_net: true });
    expect(Math.abs(said.faults[0].x_mm - pair.faults[0].x / 10)).toBeLessThan(1);
  });

  it('takes the side it is told', async () => {
    const pair = drawPair(33, ['open']);
    const built = await write('e.png', pair.built, 0);
    const plan = await write('f.png', pair.plan, 0);
    const { text } = await run(['--built', built, '--plan', plan, '--conductor', 'light', '--json']);
    expect(JSON.parse(text).faults.map((f: { kind: string }) => f.kind)).toEqual(['short']);
  });

  it.each([
    [['--plan', 'x.png'], /--built FILE/],
    [['--built', 'nowhere.png', '--plan', 'x.png'], /no file nowhere.png/],
    [['--built', 'a', '--plan', 'b', '--px-per-mm', '-3'], /above 0/],
    [['--built', 'a', '--plan', 'b', '--conductor', 'gold'], /dark, light or copper/],
    [['--built', 'a', '--plan', 'b', '--loud'], /does not know --loud/],
  ])('refuses %j in a sentence', async (args, sentence) => {
    await expect(run(args)).rejects.toThrow(sentence);
  });
});
