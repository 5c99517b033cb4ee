import type { StageName } from '../../check/index.ts';
import { FoilproofError } from '../../words/error.ts';
import { language } from '../../words/language.ts';
import type { Ask, CallName, Calls, Told } from './protocol.ts';

interface Waiting {
  resolve(answer: Calls[CallName]['answer']): void;
  reject(error: Error): void;
  progress: Progress;
}

/** Told while a call runs. */
export interface Progress {
  onStage?: (stage: StageName) => void;
  onShare?: (share: number) => void;
}

let worker: Worker | undefined;
let count = 0;
const waiting = new Map<number, Waiting>();

/**
 * Calls the worker that does the heavy stages; it starts with the first call.
 * @throws FoilproofError with the worker's own sentence, or Error for a fault of the program
 */
export function call<Name extends CallName>(
  name: Name,
  ask: Calls[Name]['ask'],
  progress: Progress = {},
): Promise<Calls[Name]['answer']> {
  const id = ++count;
  return new Promise((resolve, reject) => {
    waiting.set(id, { resolve, reject, progress });
    started().postMessage({ id, call: name, ask } satisfies Ask);
  });
}

function started(): Worker {
  if (worker) return worker;
  worker = new Worker(new URL('../../worker.ts', import.meta.url), { type: 'module' });
  worker.onmessage = ({ data }: MessageEvent<Told>) => receive(data);
  worker.onerror = ({ message }) => giveUp(message);
  worker.postMessage({ id: 0, call: 'speak', ask: { language: language() } } satisfies Ask);
  return worker;
}

function receive(told: Told): void {
  const call = waiting.get(told.id);
  if (!call) return;
  if (told.is === 'stage') return call.progress.onStage?.(told.stage);
  if (told.is === 'share') return call.progress.onShare?.(told.share);
  waiting.delete(told.id);
  if (told.is === 'answer') return call.resolve(told.answer);
  call.reject(told.forMaker ? new FoilproofError(told.sentence) : new Error(told.sentence));
}

/** A worker that died takes all its calls along; the next call starts a fresh one. */
function giveUp(message: string): void {
  worker?.terminate();
  worker = undefined;
  for (const { reject } of waiting.values()) reject(new Error(message));
  waiting.clear();
}
