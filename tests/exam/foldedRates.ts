/**
 * How well the folded card's faults are found as a maker meets them: photographs of other seeds and conditions than the
 * fixtures', the shipped segmenter, corners found by the check itself or the true ones.
 * Run: npx tsx tests/exam/foldedRates.ts [SEEDS [FIRST]] [--classical] [--names sound,rim]
 */
import { createHash } from 'node:crypto';
import { cardSchema, type Card } from '../../src/card/index.ts';
import { check, type SheetPhoto } from '../../src/check/index.ts';
import { seeCopperLearned } from '../../src/copper/learned/index.ts';
import type { LearnedMap } from '../../src/copper/index.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';
import type { Finding } from '../../src/net/index.ts';
import type { Photo } from '../../src/photo/index.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';
import { foldedCases, foldedShots, type FoldedCase } from '../generate/folded.ts';
import { render } from '../generate/render.ts';

const numbers = process.argv.slice(2).filter((each) => /^\d+$/.test(each));
const [seeds, first] = [Number(numbers[0] ?? 3), Number(numbers[1] ?? 1)];
const learned = process.argv.includes('--classical') ? (false as const) : readOnce();
const names = process.argv[process.argv.indexOf('--names') + 1]?.split(',');
const chosen = (name: string) => !process.argv.includes('--names') || names.includes(name);

type Corners = 'found' | 'true';
const none = () => ({ right: 0, holding: 0, all: 0 });
const tally = { found: none(), true: none() };

for (let salt = first; salt < first + seeds; salt++) {
  const cases = foldedCases(salt).filter(({ name }) => chosen(name));
  const needed = new Set(cases.flatMap(({ card }) => card.photos!.map(({ name }) => name)));
  const photos = new Map<string, Photo>();
  for (const { name, seed, build, conditions } of foldedShots(salt)) {
    const file = `${name}.jpg`;
    if (!needed.has(file)) continue;
    photos.set(file, await decodePhoto((await render(build, conditions, seed, file)).jpeg, file));
  }
  for (const each of cases)
    for (const corners of ['true', 'found'] as const) await examine(salt, each, corners, photos);
}
for (const [corners, { right, holding, all }] of Object.entries(tally))
  console.log(`corners ${corners}: ${right} of ${all} told exactly, ${holding} as far as what holds goes`);

async function examine(
  salt: number,
  { name, card: input, finds }: FoldedCase,
  corners: Corners,
  photos: Map<string, Photo>,
): Promise<void> {
  const parsed = cardSchema.parse(input);
  const card = corners === 'true' ? parsed : withoutCorners(parsed);
  const sheets = card.photos.map((given): SheetPhoto => ({ given, photo: photos.get(given.name)! }));
  const now = sheets.filter(({ given }) => given.sheet === 'base').at(-1)!;
  const { corners_px } = now.given;
  const others = sheets.filter((each) => each !== now);
  const checked = await check(now.photo, { ...card, corners_px }, { learned }, [], others);
  const said = checked.netlist.findings.filter(({ weight, kind }) => weight !== 'note' && kind !== 'seam');
  const found = finds.map((wanted) => said.find((one) => tells(one, wanted)));
  const beside = said.filter((one) => !found.includes(one));
  const all = found.every((one) => one !== undefined);
  const right = all && beside.length === 0;
  tally[corners].all++;
  if (right) tally[corners].right++;
  if (all && beside.every(({ weight }) => weight !== 'holds')) tally[corners].holding++;
  const laid = checked.joined!.fates.map(({ by, residualMm }) => `${by} ${residualMm.toFixed(2)}`).join(', ');
  console.log(`${salt} ${name.padEnd(12)} ${corners.padEnd(6)} ${right ? 'ok ' : 'NOT'} ${laid}`);
  if (!all) console.log('      lost', JSON.stringify(finds.filter((_, k) => !found[k])));
  for (const { kind, weight, at, sizeMm, certainty, facts } of beside)
    console.log('      beside', JSON.stringify({ kind, weight, at, sizeMm, certainty, facts }));
}

function tells(one: Finding, { kind, facts = {}, mm }: FoldedCase['finds'][number]): boolean {
  const same = Object.entries(facts).every(([key, value]) => one.facts?.[key] === value);
  return one.kind === kind && same && (mm === undefined || Math.abs((one.sizeMm ?? 0) - mm) < 0.25);
}

/** The shipped net, which reads each squared picture once though several cards show it. */
function readOnce(): (sheet: SquaredSheet) => Promise<LearnedMap | undefined> {
  const known = new Map<string, Promise<LearnedMap | undefined>>();
  return (sheet) => {
    const key = createHash('sha1').update(sheet.rgb).digest('hex');
    const map = known.get(key) ?? seeCopperLearned(sheet);
    known.set(key, map);
    return map;
  };
}

function withoutCorners(card: Card): Card {
  return { ...card, photos: card.photos.map(({ corners_px: _true, ...photo }) => photo) };
}
