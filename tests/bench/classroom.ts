import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { cardSchema } from '../../src/card/index.ts';
import { runJob } from '../../src/cli/job.ts';
import { tally } from '../../src/record/index.ts';
import card from '../../fixtures/sound.card.json' with { type: 'json' };

/** Fixtures of one plan, taken in turn; every tenth file is no picture. */
const builds = ['sound', 'gap-1.2', 'reversed-lamp'];

/**
 * `npm run bench:class -- COUNT` (300 unless given): photographs of one plan, one after another on one core, as each core of
 * `foilproof check FOLDER` takes them. Tells photographs a minute and the memory held along the way.
 */
async function benchClassroom(count: number): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'foilproof-class-'));
  const plan = cardSchema.parse(card);
  const outcomes: Parameters<typeof tally>[0] = [];
  const heldMB: number[] = [];
  const begun = performance.now();
  for (let i = 0; i < count; i++) {
    const photo = join(folder, `${i}.jpg`);
    await writeFile(photo, await pictureOf(i));
    const { json, status } = await runJob({ photo, card: plan, outputs: {} });
    outcomes.push(
      json && status !== 2 ? { verdict: json.verdict, findings: json.findings } : { findings: [] },
    );
    await rm(photo);
    heldMB.push(Math.round(process.memoryUsage().rss / 1e6));
    if ((i + 1) % 25 === 0) tellSoFar(i + 1, performance.now() - begun, heldMB[i]);
  }
  await rm(folder, { recursive: true });
  const minutes = (performance.now() - begun) / 60_000;
  const { verdicts } = tally(outcomes);
  const thirds = [0, 1, 2].map((k) => Math.max(...heldMB.slice((k * count) / 3, ((k + 1) * count) / 3)));
  console.log(`${count} photographs on one core: ${(count / minutes).toFixed(1)} a minute`);
  console.log(`peak memory of the first, second and last third: ${thirds.join(', ')} MB`);
  console.log(
    Object.entries(verdicts)
      .map((entry) => entry.join(' '))
      .join(', '),
  );
}

/** A long run tells along the way, with the time that the processor worked, which other programs do not lengthen much. */
function tellSoFar(done: number, ms: number, heldMB: number): void {
  const { user, system } = process.cpuUsage();
  const busy = (user + system) / 60e6;
  process.stderr.write(
    `${done} done: ${(done / (ms / 60_000)).toFixed(1)} a minute, ${(done / busy).toFixed(1)} a minute of the core's time, ${heldMB} MB held\n`,
  );
}

await benchClassroom(Number(process.argv[2] ?? 300));

/** Small differences make each a photograph of its own. */
async function pictureOf(i: number): Promise<Uint8Array> {
  if (i % 10 === 9) return Buffer.from('no picture');
  return sharp(`fixtures/${builds[i % builds.length]}.jpg`)
    .resize(1200 + (i % 7) * 20)
    .modulate({ brightness: 0.95 + (i % 5) * 0.02 })
    .jpeg({ quality: 85 })
    .toBuffer();
}
