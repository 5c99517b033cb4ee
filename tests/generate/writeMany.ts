import { mkdir } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { drawMany, splits } from './many.ts';
import type { Split } from './many.ts';
import { writeEntry } from './writeEntry.ts';

/**
 * npx tsx tests/generate/writeMany.ts fit|held COUNT DIR [FROM]
 * Photographs for fitting certainties, or for measuring them: the same on every run.
 */
const [split, count, dir, from = '0'] = process.argv.slice(2);
if (!(split in splits) || !dir) throw new Error('Give: fit|held COUNT DIR [FROM]');
const folder = pathToFileURL(`${dir}/`);
await mkdir(folder, { recursive: true });
for (const entry of drawMany(split as Split, Number(count)).slice(Number(from))) {
  process.stdout.write(`${entry.name}.jpg ${await writeEntry(folder, entry)} kB\n`);
}
