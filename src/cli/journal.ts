import { createHash } from 'node:crypto';
import { appendFileSync, existsSync, readFileSync, statSync } from 'node:fs';
import { z } from 'zod';
import { classroomWords } from '../words/classroom.ts';
import { FoilproofError } from '../words/index.ts';
import type { Answer, Job } from './job.ts';

const head = JSON.stringify({ format: 'foilproof-journal/1' });
const line = z.object({
  key: z.string(),
  answer: z.looseObject({ photo: z.string(), status: z.union([z.literal(0), z.literal(1), z.literal(2)]) }),
});

/** What is known of a run's jobs from an earlier one, and where each further answer is written down. */
export interface Journal {
  /** One place a job; undefined where it is still to be done. */
  known: (Answer | undefined)[];
  /** Writes an answer down at once, so that a run that is killed loses none. */
  note(job: number, answer: Answer): void;
}

/**
 * Opens a journal, or begins one. A job counts as done while its photograph, its card and its outputs are the same.
 * @throws FoilproofError where the file is something else or cannot be written
 */
export function openJournal(path: string, jobs: Job[]): Journal {
  const keys = jobs.map(keyOf);
  const done = existsSync(path) ? answersIn(path) : undefined;
  if (!done) write(path, `${head}\n`);
  return {
    known: keys.map((key) => done?.get(key)),
    note: (job, answer) => write(path, `${JSON.stringify({ key: keys[job], answer })}\n`),
  };
}

function keyOf({ photo, again, card, outputs }: Job): string {
  const about = statSync(photo, { throwIfNoEntry: false });
  const told = JSON.stringify([photo, about?.size, about?.mtimeMs, again, card, outputs]);
  return createHash('sha256').update(told).digest('hex').slice(0, 24);
}

function answersIn(path: string): Map<string, Answer> {
  const text = readFileSync(path, 'utf8');
  const [first, ...lines] = text.split('\n');
  if (first !== head) throw new FoilproofError(classroomWords.notJournal(path));
  // A run that was killed while it wrote leaves half a line, which must not run into the next one.
  if (!text.endsWith('\n')) write(path, '\n');
  return new Map(lines.map(answerIn).filter((each) => each !== undefined));
}

function answerIn(text: string): [string, Answer] | undefined {
  try {
    const { key, answer } = line.parse(JSON.parse(text));
    return [key, answer as Answer];
  } catch {
    return undefined;
  }
}

function write(path: string, text: string): void {
  try {
    appendFileSync(path, text);
  } catch {
    throw new FoilproofError(classroomWords.noJournal(path));
  }
}
