import { openLineReader } from '../../../src/engine/ocr.ts';
import { readerPlacesNode } from '../../../src/engine/ocrPlacesNode.ts';
import { printedNight } from '../../generate/printed.ts';
import { nameSets, readOnce } from './readScore.ts';

/**
 * npx tsx tests/parts/labels/readRates.ts [COUNT] [FROM]
 * Prints plans, photographs them at 150 dots an inch under tilts of 0 to 30 degrees, and says how much is read right.
 */
const count = Number(process.argv[2] ?? 40);
/** Number of the first picture: others draw other seeds, plans and tilts. */
const from = Number(process.argv[3] ?? 0);
const perPrint = 5;
const goldenRatio = 0.618;

const reader = await openLineReader(readerPlacesNode());
let right = 0;
let of = 0;
let tags = 0;
const wrong: string[] = [];
let printed: Awaited<ReturnType<typeof printedNight>> | undefined;
for (let n = from; n < from + count; n++) {
  const print = Math.floor(n / perPrint);
  if (!printed || n % perPrint === 0)
    printed = await printedNight(nameSets[print % nameSets.length], print / 10);
  const tiltDeg = 30 * ((n * goldenRatio) % 1);
  const read = await readOnce(printed, { tiltDeg, seed: 5000 + n, learned: true }, reader);
  right += read.right;
  of += read.of;
  if (read.tagRight) tags++;
  wrong.push(...read.wrong.map((what) => `${n}: ${what}`));
  process.stderr.write(
    `${n} ${tiltDeg.toFixed(0)} degrees: ${read.right} of ${read.of}${read.wrong.length ? `, wrong: ${read.wrong.join(', ')}` : ''}\n`,
  );
}
await reader.close();
console.log(
  `${right} of ${of} labels read right (${((100 * right) / of).toFixed(1)} %), tags ${tags} of ${count}`,
);
console.log(`attached wrongly: ${wrong.length}${wrong.length ? ` (${wrong.join('; ')})` : ''}`);
