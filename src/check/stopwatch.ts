import type { StageName } from './types.ts';

export interface Stopwatch {
  timingsMs: Record<StageName, number>;
  /** Runs a stage and adds its time. */
  run<T>(stage: StageName, work: () => T | Promise<T>): Promise<T>;
}

/** Times the stages of one check; what is not run again keeps no time. */
export function stopwatch(onStage?: (stage: StageName) => void): Stopwatch {
  const timingsMs = { decode: 0, square: 0, copper: 0, trace: 0, net: 0, power: 0 };
  return {
    timingsMs,
    async run(stage, work) {
      onStage?.(stage);
      const begun = performance.now();
      const made = await work();
      timingsMs[stage] += performance.now() - begun;
      return made;
    },
  };
}
