import { cliWords } from '../words/cli.ts';
import { fullText, oneLine } from './checkText.ts';
import { runJob } from './job.ts';
import type { Answer, Job } from './job.ts';
import { checkOutputs, outputsOf } from './outputNames.ts';
import { photosIn } from './photosIn.ts';
import { runPool } from './pool.ts';
import { progress } from './progress.ts';
import { readArguments } from './readArguments.ts';
import { FoilproofError } from '../words/index.ts';
import { readCard } from './readCard.ts';

const stages = Object.keys(cliWords.stage) as (keyof typeof cliWords.stage)[];

/**
 * `foilproof check PHOTO...`: one photograph in full, several (or folders) one line each on all cores.
 * @returns exit status, the worst of all photographs: 2 over 1 over 0
 * @throws FoilproofError where the command itself is wrong
 */
export async function checkCommand(
  args: string[],
  print: (line: string) => void = console.log,
  complain: (line: string) => void = console.error,
): Promise<number> {
  const { files, values, flags } = readArguments('check', args, {
    values: ['card', 'again', 'mask', 'squared', 'report'],
    flags: ['json'],
  });
  const outputs = { mask: values.get('mask'), squared: values.get('squared'), report: values.get('report') };
  checkOutputs(outputs);
  const photos = await photosIn(files);
  const cardPath = values.get('card');
  const card = cardPath ? await readCard(cardPath) : undefined;
  const single = photos.length === 1;
  const again = values.get('again');
  if (again !== undefined && !single) throw new FoilproofError(cliWords.againNeedsOne);
  const jobs = photos.map((photo) => ({ photo, again, card, outputs: outputsOf(outputs, photo, single) }));
  const say = (answer: Answer) => {
    if (flags.has('json')) print(JSON.stringify(answer.json ? withWhy(answer) : failure(answer)));
    else if (single) for (const line of fullText(answer)) print(line);
    else print(oneLine(answer));
    if (answer.status === 2) complain(`foilproof: ${sentence(answer)}`);
  };
  const statuses = single ? await checkOne(jobs[0], say) : await checkMany(jobs, say);
  return Math.max(...statuses);
}

async function checkOne(job: Job, say: (answer: Answer) => void): Promise<number[]> {
  const bar = progress(stages.length);
  const answer = await runJob(job, (stage) => bar.show(stages.indexOf(stage), cliWords.stage[stage]));
  bar.end();
  say(answer);
  return [answer.status];
}

async function checkMany(jobs: Job[], say: (answer: Answer) => void): Promise<number[]> {
  const statuses: number[] = [];
  const bar = progress(jobs.length);
  bar.show(0, cliWords.checking(0, jobs.length));
  await runPool(jobs, (answer, done) => {
    bar.end();
    say(answer);
    statuses.push(answer.status);
    bar.show(done, cliWords.checking(done, jobs.length));
  });
  bar.end();
  return statuses;
}

function withWhy({ json, why }: Answer) {
  return why ? { ...json, could_not_check: why } : json;
}

function failure({ photo, why }: Answer) {
  return { photo, could_not_check: why };
}

/** The reason, naming the photograph where it does not yet. */
function sentence({ photo, why = '' }: Answer): string {
  const name = photo.split(/[\\/]/).pop() ?? photo;
  return (why.includes(name) ? why : cliWords.unexpected(photo, why)).replace(/\s*\n\s*/g, ' ');
}
