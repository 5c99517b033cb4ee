import { execFileSync } from 'node:child_process';
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { tapTimes } from './fortyPieces.ts';
import { inChromium } from './inChromium.ts';
import { openCvAlone } from './openCvAlone.ts';
import { openCvDoors } from './openCvDoors.ts';
import { compareTimes, routeTimes } from './planTimes.ts';
import { beforeFirstPaint, scriptSizes } from './scriptSizes.ts';

/**
 * npm run bench: time a stage at 3, 12 and 48 megapixels in one run, against the picture's size and against the like
 * OpenCV calls alone; peak memory; tap to verdict at forty pieces; start-up; script sizes. Writes out/bench.json.
 */
const path = (to: string) => fileURLToPath(new URL(`../../${to}`, import.meta.url));
const [photo, card] = [path('fixtures/sound.jpg'), path('fixtures/sound.card.json')];
const stages = ['decode', 'square', 'copper', 'trace', 'net', 'power'];

interface Run {
  megapixels: number;
  timings: Record<string, number>;
  peakMB: number;
}

const runAt = (megapixels: number): Run =>
  JSON.parse(
    execFileSync(
      process.execPath,
      ['--import', 'tsx', path('tests/bench/onePhoto.ts'), photo, card, String(megapixels)],
      {
        encoding: 'utf8',
      },
    ),
  );

const idle = runAt(0);
const runs = [3, 12, 48].map(runAt);
const alone = await openCvAlone(photo, 12, { width: 1050, height: 1480 });
const doors = await openCvDoors(photo);
const taps = { plan: tapTimes(true), bare: tapTimes(false) };
const planned = { route: routeTimes(), compare: compareTimes() };
const inPage = await inChromium([3, 12]);
const started = performance.now();
execFileSync(process.execPath, [path('src/foilproof.mjs'), '--help']);
const startMs = performance.now() - started;
const sizes = await scriptSizes(path('dist'));
const firstPaintKB = await beforeFirstPaint(path('dist'), sizes);

const sum = (run: Run) => Object.values(run.timings).reduce((a, b) => a + b, 0);
const ms = (v: number) => v.toFixed(0).padStart(8);
const lines = [
  `stage      ${runs.map((r) => `${r.megapixels.toFixed(0)} MP`.padStart(8)).join('')}   48/3 MP   12 MP against OpenCV alone`,
  ...stages.map((s) => {
    const growth = runs[2].timings[s] / Math.max(1, runs[0].timings[s]);
    const like = s in alone ? alone[s as keyof typeof alone] : undefined;
    const ratio = like ? `${(runs[1].timings[s] / like).toFixed(1)} x (${like.toFixed(0)} ms)` : '';
    return `${s.padEnd(11)}${runs.map((r) => ms(r.timings[s])).join('')}${growth.toFixed(1).padStart(10)}   ${ratio}`;
  }),
  `whole      ${runs.map((r) => ms(sum(r))).join('')}${(sum(runs[2]) / sum(runs[0])).toFixed(1).padStart(10)}   (16 = linear)`,
  '',
  `peak memory ${runs.map((r) => `${r.peakMB.toFixed(0)} MB`).join(', ')}; idle ${idle.peakMB.toFixed(0)} MB; bytes per input pixel ${bytesPerPixel(runs[1], runs[2]).toFixed(1)} (12 to 48 MP), of them 4 the picture itself`,
  ...doors.map(
    ({ stage, ours, alone: call }) =>
      `OpenCV stage, ${stage}: ${ours.toFixed(1)} ms, its call alone ${call.toFixed(1)} ms, ${(ours / call).toFixed(2)} x (bar 2)`,
  ),
  ...Object.entries(taps).map(
    ([as, t]) =>
      `tap to verdict, ${t.pieces} pieces, ${as === 'plan' ? 'with' : 'without'} plan: tap ${t.tap.toFixed(1)} ms, brush ${t.brush.toFixed(1)} ms, undo ${t.unbrush.toFixed(1)} ms (one frame 16 ms)`,
  ),
  ...inPage.runs.map(
    (run) =>
      `in Chromium, engine warm, ${run.megapixels} MP: file to verdict ${run.wholeMs.toFixed(0)} ms, of it ${Object.entries(
        run.timings,
      )
        .map(([stage, t]) => `${stage} ${t.toFixed(0)}`)
        .join(', ')}`,
  ),
  `in Chromium, most memory of a renderer ${inPage.peakMB?.toFixed(0) ?? 'unknown'} MB (a phone of 2 GB: under 1000)`,
  ...Object.entries(planned).map(
    ([what, t]) =>
      `${what}, ms of a processor: median ${t.median.toFixed(0)}, 95 % ${t.p95.toFixed(0)}, most ${t.most.toFixed(0)}`,
  ),
  `command line start-up ${startMs.toFixed(0)} ms`,
  firstPaintKB === undefined
    ? 'dist/ is not built: npm run build, then bench again for the script sizes'
    : `before first paint ${firstPaintKB.toFixed(0)} kB compressed`,
  ...sizes.slice(0, 8).map((s) => `  ${s.file}  ${s.kB.toFixed(0)} kB, ${s.gzipKB.toFixed(0)} kB compressed`),
];
process.stdout.write(`${lines.join('\n')}\n`);
await mkdir(path('out'), { recursive: true });
const result = { idle, runs, alone, doors, taps, planned, inPage, startMs, sizes, firstPaintKB };
await writeFile(path('out/bench.json'), JSON.stringify(result, null, 1));

function bytesPerPixel(small: Run, large: Run): number {
  return ((large.peakMB - small.peakMB) * 1024 * 1024) / ((large.megapixels - small.megapixels) * 1e6);
}
