import { fork } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { availableParallelism } from 'node:os';
import type { Answer, Job } from './job.ts';
import type { Journal } from './journal.ts';
import { spokenArguments } from './speakAsAsked.ts';

const workerFile = new URL('./worker.mjs', import.meta.url);

/**
 * Runs the jobs on all cores, each core a process of its own, so that a photograph that brings one down costs only
 * its own answer. Answers are told in the order of the jobs; what a journal knows is not done again.
 */
export async function runPool(
  jobs: Job[],
  tell: (answer: Answer, done: number) => void,
  journal?: Journal,
): Promise<void> {
  const answers: (Answer | undefined)[] = jobs.map(() => undefined);
  let next = 0;
  let told = 0;
  let done = 0;
  const settle = (i: number, answer: Answer) => {
    answers[i] = answer;
    done++;
    for (let ready = answers[told]; ready; ready = answers[told]) {
      answers[told++] = undefined;
      tell(ready, done);
    }
  };
  const core = async () => {
    let child: ChildProcess | undefined;
    while (next < jobs.length) {
      const i = next++;
      const known = journal?.known[i];
      if (known) {
        settle(i, known);
        continue;
      }
      child = child?.connected ? child : fork(workerFile, spokenArguments());
      const answer = await ask(child, jobs[i]);
      journal?.note(i, answer);
      settle(i, answer);
    }
    child?.disconnect();
  };
  const cores = Math.min(availableParallelism(), jobs.length);
  await Promise.all(Array.from({ length: cores }, core));
}

function ask(child: ChildProcess, job: Job): Promise<Answer> {
  return new Promise((resolve) => {
    const finish = (answer: Answer) => {
      child.off('message', heard);
      child.off('exit', ended);
      resolve(answer);
    };
    const heard = (answer: unknown) => finish(answer as Answer);
    const ended = () => finish({ photo: job.photo, status: 2, why: 'the checking process ended early' });
    child.on('message', heard);
    child.on('exit', ended);
    child.send(job);
  });
}
