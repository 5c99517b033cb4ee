import { fork } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { availableParallelism } from 'node:os';
import type { Answer, Job } from './job.ts';
import { spokenArguments } from './speakAsAsked.ts';

const workerFile = new URL('./worker.mjs', import.meta.url);

/**
 * Runs the jobs on all cores, each core a process of its own, so that a photograph that brings one down costs only
 * its own answer. Answers are told in the order of the jobs.
 */
export async function runPool(jobs: Job[], tell: (answer: Answer, done: number) => void): Promise<void> {
  const answers: (Answer | undefined)[] = jobs.map(() => undefined);
  let next = 0;
  let told = 0;
  let done = 0;
  const settle = (i: number, answer: Answer) => {
    answers[i] = answer;
    done++;
    while (told < jobs.length && answers[told]) tell(answers[told++] as Answer, done);
  };
  const core = async () => {
    let child: ChildProcess | undefined;
    while (next < jobs.length) {
      const i = next++;
      child = child?.connected ? child : fork(workerFile, spokenArguments());
      settle(i, await ask(child, jobs[i]));
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
