import { sayTally, tally, type Outcome } from '../record/index.ts';
import { cliWords } from '../words/cli.ts';
import { cardPhotos } from './cardPhotos.ts';
import { fullText, oneLine } from './checkText.ts';
import { openJournal } from './journal.ts';
import { runJob } from './job.ts';
import type { Answer, Job } from './job.ts';
import { checkOutputs, outputsOf } from './outputNames.ts';
import { paperOf } from './paperOf.ts';
import { photosIn } from './photosIn.ts';
import { runPool } from './pool.ts';
import { progress } from './progress.ts';
import { readArguments } from './readArguments.ts';
import { FoilproofError } from '../words/index.ts';
import { readCard } from './readCard.ts';

const stages = Object.keys(cliWords.stage) as (keyof typeof cliWords.stage)[];

/**
 * `foilproof check PHOTO...`: one photograph in full, several (or folders) one line each on all cores. With
 * a card and no photograph: the sheets that the card names, together.
 * @returns exit status, the worst of all photographs: 2 over 1 over 0
 * @throws FoilproofError where the command itself is wrong
 */
export async function checkCommand(
  args: string[],
  print: (line: string) => void = console.log,
  complain: (line: string) => void = console.error,
): Promise<number> {
  const { files, values, flags } = readArguments('check', args, {
    values: ['card', 'again', 'journal', 'mask', 'squared', 'report', 'paper'],
    flags: ['json', 'summary', 'labels'],
  });
  const outputs = { mask: values.get('mask'), squared: values.get('squared'), report: values.get('report') };
  const paper = paperOf(values.get('paper'));
  checkOutputs(outputs);
  const cardPath = values.get('card');
  const given = cardPath ? await readCard(cardPath) : undefined;
  const named = files.length === 0 && given && cardPath ? await cardPhotos(given, cardPath) : undefined;
  const photos = named ? [named.photo] : await photosIn(files);
  const { card, sheets, base } = named ?? { card: given, sheets: undefined, base: undefined };
  const single = photos.length === 1;
  const again = values.get('again');
  if (again !== undefined && !single) throw new FoilproofError(cliWords.againNeedsOne);
  const jobs = photos.map((photo) => ({
    photo,
    again,
    sheets,
    card,
    base,
    labels: flags.has('labels'),
    paper,
    outputs: outputsOf(outputs, photo, single),
  }));
  const outcomes: Outcome[] = [];
  const say = (answer: Answer) => {
    outcomes.push(outcomeOf(answer));
    if (flags.has('json')) print(JSON.stringify(answer.json ? withWhy(answer) : failure(answer)));
    else if (single) for (const line of fullText(answer)) print(line);
    else print(oneLine(answer));
    if (answer.status === 2) complain(`foilproof: ${sentence(answer)}`);
  };
  const journal = values.get('journal');
  const statuses =
    single && journal === undefined ? await checkOne(jobs[0], say) : await checkMany(jobs, say, journal);
  if (flags.has('summary')) for (const line of summaryOf(outcomes)) print(line);
  return Math.max(...statuses);
}

async function checkOne(job: Job, say: (answer: Answer) => void): Promise<number[]> {
  const bar = progress(stages.length);
  const answer = await runJob(job, (stage) => bar.show(stages.indexOf(stage), cliWords.stage[stage]));
  bar.end();
  say(answer);
  return [answer.status];
}

async function checkMany(
  jobs: Job[],
  say: (answer: Answer) => void,
  journalPath: string | undefined,
): Promise<number[]> {
  const journal = journalPath === undefined ? undefined : openJournal(journalPath, jobs);
  const statuses: number[] = [];
  const bar = progress(jobs.length);
  bar.show(0, cliWords.checking(0, jobs.length));
  await runPool(
    jobs,
    (answer, done) => {
      bar.end();
      say(answer);
      statuses.push(answer.status);
      bar.show(done, cliWords.checking(done, jobs.length));
    },
    journal,
  );
  bar.end();
  return statuses;
}

/** What the summary counts of an answer: one that could not be checked has no verdict. */
function outcomeOf({ status, json }: Answer): Outcome {
  if (!json || status === 2) return { findings: [] };
  const findings = json.findings.map((finding) => ({ ...finding, checked: finding.checked !== undefined }));
  return { verdict: json.verdict, findings };
}

function summaryOf(outcomes: Outcome[]): string[] {
  const { counts, commonest } = sayTally(tally(outcomes));
  return ['', ...counts, commonest];
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
