import { fuzzCards, fuzzPhotos } from './runFuzz.ts';

/** npm run fuzz [-- COUNT]: 10,000 bad inputs unless told, three in four of them cards, the rest picture files. */
const count = Number(process.argv[2] ?? 10_000);
const cards = Math.round(0.75 * count);
const tallies = { cards: await fuzzCards(1, cards), photographs: await fuzzPhotos(1, count - cards) };
for (const [what, { refused, answered, slowest, broken }] of Object.entries(tallies)) {
  process.stdout.write(
    `${what}: ${refused} refused in a sentence, ${answered} answered, ${broken.length} broken; slowest ${slowest.ms.toFixed(0)} ms (seed ${slowest.seed})\n`,
  );
  for (const { seed, what: why } of broken.slice(0, 20)) process.stdout.write(`  seed ${seed}: ${why}\n`);
}
process.exitCode = Object.values(tallies).some(({ broken }) => broken.length > 0) ? 1 : 0;
