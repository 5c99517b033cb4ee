import { execFile, spawn } from 'node:child_process';
import { appendFileSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openJournal } from '../../src/cli/journal.ts';
import { tally } from '../../src/record/index.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));
const program = join(root, 'src/foilproof.mjs');
const folder = mkdtempSync(join(tmpdir(), 'foilproof-class-'));
const journal = join(folder, 'class.journal');
const run = ['check', join(folder, 'photos'), '--summary', '--journal', journal];
const card = ['--card', join(root, 'fixtures/gap-1.2.card.json')];

beforeAll(async () => {
  await sharp(join(root, 'fixtures/gap-1.2.jpg'))
    .resize(750)
    .jpeg({ quality: 90 })
    .toFile(await photo('gap-1.2.jpg'));
  writeFileSync(await photo('sound.jpg'), 'no picture either');
  writeFileSync(await photo('broken.jpg'), 'no picture');
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function photo(name: string): Promise<string> {
  await mkdir(join(folder, 'photos'), { recursive: true });
  return join(folder, 'photos', name);
}

const answered = () =>
  existsSync(journal)
    ? readFileSync(journal, 'utf8')
        .split('\n')
        .filter((line) => line.includes('"answer"'))
    : [];

test('a run killed in the middle goes on where it was, with every card told once', async () => {
  const first = spawn(process.execPath, [program, ...run, ...card], { stdio: 'ignore' });
  while (answered().length < 1 && first.exitCode === null) await wait(30);
  first.kill('SIGKILL');
  const before = answered();
  expect(before.length).toBeLessThan(3);
  appendFileSync(journal, '{"key":"half a li');
  const { code, out, err } = await told([...run, ...card]);
  const keys = answered().map((line) => (JSON.parse(line) as { key: string }).key);
  expect(new Set(keys).size).toBe(3);
  expect(answered().slice(0, before.length)).toEqual(before);
  expect(keys).toHaveLength(3);
  expect(code).toBe(2);
  expect(err).toMatch(/broken\.jpg/);
  const lines = out.trim().split('\n');
  expect(lines.slice(0, 3).map((line) => /(\w[\w.-]*\.jpg)/.exec(line)?.[1])).toEqual([
    'broken.jpg',
    'gap-1.2.jpg',
    'sound.jpg',
  ]);
  expect(out).toContain('Could not be checked: 2');
  expect(out).toMatch(/Commonest fault: .+, on \d of 3 cards\./);
  const again = await told([...run, ...card]);
  expect(again.out).toBe(out);
  expect(answered()).toHaveLength(3);
});

test('another card, or a changed photograph, is checked anew', () => {
  const job = { photo: join(folder, 'photos/sound.jpg'), outputs: {} };
  const path = join(folder, 'other.journal');
  openJournal(path, [job]).note(0, { photo: job.photo, status: 0 });
  expect(openJournal(path, [job]).known[0]).toEqual({ photo: job.photo, status: 0 });
  expect(openJournal(path, [{ ...job, outputs: { mask: 'a.png' } }]).known).toEqual([undefined]);
  appendFileSync(job.photo, 'x');
  expect(openJournal(path, [job]).known).toEqual([undefined]);
});

test('refuses to write into a file that is no journal', () => {
  const path = join(folder, 'notes.txt');
  writeFileSync(path, 'a shopping list\n');
  expect(() => openJournal(path, [])).toThrow('no journal of an earlier run');
  expect(readFileSync(path, 'utf8')).toBe('a shopping list\n');
});

test('a fault counts once a card, and the commonest comes first', () => {
  const gap = { kind: 'gap', weight: 'holds', certainty: 0.9 } as const;
  const bridge = { kind: 'bridge', weight: 'holds', certainty: 0.9 } as const;
  const said = tally([
    { verdict: 'hold', findings: [gap, gap, gap] },
    { verdict: 'hold', findings: [bridge] },
    { verdict: 'hold', findings: [bridge, { ...gap, certainty: 0.3 }] },
    { verdict: 'clear', findings: [{ ...bridge, checked: true }] },
    { findings: [gap] },
  ]);
  expect(said.faults).toEqual([
    { kind: 'bridge', cards: 2 },
    { kind: 'gap', cards: 1 },
  ]);
  expect(said.verdicts).toEqual({ clear: 1, 'clear-once-checked': 0, hold: 3, none: 1 });
});

function told(args: string[]): Promise<{ code: number; out: string; err: string }> {
  return new Promise((resolve) => {
    const options = { env: { ...process.env, LANG: 'C' } };
    const child = execFile(process.execPath, [program, ...args], options, (_error, out, err) =>
      resolve({ code: child.exitCode ?? -1, out, err }),
    );
  });
}
