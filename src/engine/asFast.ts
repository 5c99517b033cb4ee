import type { Net } from './net.ts';

/** Side of the picture that both are timed on, px: large enough that what a call costs by itself does not decide. */
const side = 512;

/**
 * Times both nets on one picture; the quick one has had a first go at it, in which it makes itself ready.
 * @param now a clock, ms
 * @throws Error where the quick one takes longer
 */
export async function asFast(quick: Net, sure: Net, now: () => number): Promise<void> {
  const planes = new Float32Array(3 * side * side).fill(0.5);
  const time = async (net: Net): Promise<number> => {
    const start = now();
    await net.run(planes, side, side);
    return now() - start;
  };
  await time(quick);
  const [itsMs, sureMs] = [await time(quick), await time(sure)];
  if (itsMs > sureMs) throw new Error(`The graphics processor takes ${itsMs} ms where ${sureMs} ms will do.`);
}
