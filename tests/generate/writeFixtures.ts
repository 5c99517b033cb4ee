import { mkdir } from 'node:fs/promises';
import { catalogue } from './catalogue.ts';
import { writeEntry } from './writeEntry.ts';
import { writeFolded } from './writeFolded.ts';

/** Remakes fixtures/: per entry the photograph, its card, its truth and the mask of its copper. Names as arguments choose. */
const folder = new URL('../../fixtures/', import.meta.url);
const chosen = process.argv.slice(2);

await mkdir(folder, { recursive: true });
for (const entry of catalogue()) {
  if (chosen.length > 0 && !chosen.includes(entry.name)) continue;
  process.stdout.write(`${entry.name}.jpg ${await writeEntry(folder, entry)} kB\n`);
}
await writeFolded(chosen);
