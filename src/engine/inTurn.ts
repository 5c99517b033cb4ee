import type { Net } from './net.ts';

/** Does one piece of work after another, each begun when the one before has ended, well or badly. */
export type InTurn = <T>(work: () => Promise<T>) => Promise<T>;

/**
 * A queue of its own for each runner: what a runner lays on its stack is overwritten where a second call begins before
 * the first has ended.
 */
export function turns(): InTurn {
  let before: Promise<unknown> = Promise.resolve();
  return (work) => {
    const turn = before.then(work, work);
    before = turn;
    return turn;
  };
}

export function oneByOne(net: Net, inTurn: InTurn): Net {
  return { run: (...picture) => inTurn(() => net.run(...picture)) };
}
