import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { badness, figure, page } from './contactSheet.ts';
import { examine } from './examine.ts';
import type { Mode, Row } from './examine.ts';
import { exists, namesIn, readEntry } from './readSet.ts';
import { report } from './tables.ts';
import { tapTable } from './taps/tapTable.ts';
import { tapThrough, type TapRow } from './taps/tapThrough.ts';

/**
 * npm run exam -- DIR [--only NAME]... [--mode own|true] [--worst N] [--taps N] [--again DIR]
 * Checks every photograph with truth in a folder and says how well; writes out/exam.json and out/exam.html.
 * With --again a photograph of the same name in DIR, where there is one, is a further shot of the same sheet.
 * With --taps a maker is played who taps at what is wrong, up to N times a photograph.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    only: { type: 'string', multiple: true },
    mode: { type: 'string' },
    worst: { type: 'string', default: '8' },
    every: { type: 'string', default: '1' },
    taps: { type: 'string', default: '0' },
    again: { type: 'string' },
  },
});
const folder = positionals[0];
if (!folder) throw new Error('Name a folder: npm run exam -- DIR');
const modes: Mode[] = (['own outline', 'true corners'] as const).filter(
  (m) => !values.mode || m.startsWith(values.mode),
);
const names = (await namesIn(folder))
  .filter((n) => !values.only || values.only.some((o) => n.startsWith(o)))
  .filter((_, i) => i % Number(values.every) === 0);

const mostTaps = Number(values.taps);
const rows: Row[] = [];
const tapRows: TapRow[] = [];
const figures: { badness: number; html: string }[] = [];
for (const name of names) {
  const entry = { ...(await readEntry(folder, name)), againPath: await again(name) };
  for (const mode of modes) {
    // Without true corners both modes are the same.
    if (mode === 'true corners' && !entry.cornersPx && modes.length > 1) continue;
    const { row, checked, photo } = await examine(entry, mode);
    rows.push(row);
    process.stderr.write(`${row.name} ${mode}${row.error ? `: ${row.error}` : ''}\n`);
    if (mostTaps > 0 && checked && photo)
      tapRows.push(await tapThrough(entry, mode, photo, checked, mostTaps));
    if (checked) await keepWorst(row, () => figure(row, entry, checked));
  }
}

const table = modes
  .map((mode) =>
    report(
      rows.filter((r) => r.mode === mode),
      mode,
    ),
  )
  .join('\n');
process.stdout.write(`${table}\n`);
for (const mode of mostTaps > 0 ? modes : []) {
  const own = tapRows.filter((row) => row.mode === mode);
  process.stdout.write(`${tapTable(own, mode, mostTaps)}\n`);
}
await mkdir('out', { recursive: true });
await writeFile('out/exam.json', JSON.stringify({ folder, rows, taps: tapRows }, null, 1));
const sorted = [...figures].sort((a, b) => b.badness - a.badness);
await writeFile(
  'out/exam.html',
  page(
    sorted.map((f) => f.html),
    table,
  ),
);

/** Where a further shot of a photograph lies, if there is one. */
async function again(name: string): Promise<string | undefined> {
  const path = values.again && join(values.again, name);
  return path && (await exists(path)) ? path : undefined;
}

/** Draws only those that may come onto the sheet: a figure is some 200 kB. */
async function keepWorst(row: Row, draw: () => Promise<string>): Promise<void> {
  const bad = badness(row);
  figures.sort((a, b) => b.badness - a.badness);
  const room = Number(values.worst);
  if (room === 0) return;
  if (figures.length >= room && bad <= figures[room - 1].badness) return;
  figures.splice(room - 1, Infinity);
  figures.push({ badness: bad, html: await draw() });
}
