import { writeFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { format } from 'prettier';
import { examplesOf, type Example } from './examples.ts';
import { certaintyOf, fitCurves, type Curves } from './fitCurves.ts';
import { reliabilityTable } from './reliabilityTable.ts';

/**
 * npx tsx tests/net/fit/fitCertainty.ts DIR[:WEIGHT]... [--test DIR]... [--write] [--out DIR]
 * The curves from evidence to certainty (src/net/certainty/fitted.ts) from photographs with truth: folders as for
 * npm run exam, or the rows-NAME.json that an earlier run left in --out (out/certainty unless given). A drawn photograph
 * counts a quarter of a path-traced one, unless a weight says otherwise. Prints how reliable the certainties are before,
 * and after by leaving out a fifth of the photographs at a time; then on each --test, of which nothing is learnt.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    test: { type: 'string', multiple: true, default: [] },
    write: { type: 'boolean', default: false },
    out: { type: 'string', default: 'out/certainty' },
  },
});
if (positionals.length === 0) throw new Error('Name folders of photographs with truth.');

const folds = 5;
const examples: Example[] = [];
for (const set of positionals) {
  const [, folder, weight = '1'] = /^(.*?)(?::([\d.]+))?$/.exec(set)!;
  examples.push(...(await examplesOf(folder, Number(weight), values.out)));
}
const curves = fitCurves(examples);
print('fitted on, as shipped', examples, (each) => each.certainty);
print('fitted on, left out by fifths', examples, leftOut());
for (const folder of values.test) {
  const kept = await examplesOf(folder, 1, values.out);
  print(`${folder}, as shipped`, kept, (each) => each.certainty);
  print(`${folder}, fitted`, kept, (each) => certaintyOf(curves, each));
}
for (const [name, { shift, slope }] of Object.entries(curves)) {
  const own = examples.filter(({ kind, by }) => name === kind || name === `${kind}/${by}`);
  const right = own.filter((each) => each.right).length;
  process.stdout.write(`${name.padEnd(22)}${shift} + ${slope} x  (${right} right of ${own.length})\n`);
}
if (values.write) await write(curves);

/** Each example's certainty by curves that never saw its photograph. */
function leftOut(): (each: Example) => number {
  const photos = [...new Set(examples.map(({ photo }) => photo))];
  const foldOf = new Map(photos.map((photo, n) => [photo, n % folds]));
  const fits = Array.from({ length: folds }, (_, n) =>
    fitCurves(examples.filter(({ photo }) => foldOf.get(photo) !== n)),
  );
  return (each) => certaintyOf(fits[foldOf.get(each.photo)!], each);
}

function print(title: string, of: readonly Example[], certainty: (each: Example) => number): void {
  process.stdout.write(`${title}\n${reliabilityTable(of, certainty)}\n\n`);
}

async function write(fitted: Curves): Promise<void> {
  const file = new URL('../../../src/net/certainty/fitted.ts', import.meta.url);
  const text = `import type { Curve } from './curve.ts';

/** Written by tests/net/fit/fitCertainty.ts: how often findings of each class of evidence were right. */
export const fitted: Readonly<Record<string, Curve>> = ${JSON.stringify(fitted)};`;
  await writeFile(file, await format(text, { parser: 'typescript', printWidth: 110, singleQuote: true }));
}
