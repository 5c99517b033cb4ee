import type { LearnedMap } from '../copper/index.ts';
import { seeCopperLearned } from '../copper/learned/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import type { CheckOptions } from './options.ts';

/** What the trained nets see; nothing where they are not wanted, and `lost` where they cannot be loaded: the classical segmenter stands alone then. */
export async function learnedOr(
  learned: CheckOptions['learned'],
  sheet: SquaredSheet,
): Promise<{ map?: LearnedMap; lost: boolean }> {
  if (learned === false) return { lost: false };
  const see = learned ?? seeCopperLearned;
  return see(sheet).then(
    (map) => ({ map, lost: false }),
    () => ({ lost: true }),
  );
}
