import type { LearnedMap } from '../copper/index.ts';
import { seeCopperLearned } from '../copper/learned/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import type { CheckOptions } from './options.ts';

/** What the trained net sees; nothing where it is not wanted or cannot be loaded: the classical segmenter stands alone then. */
export async function learnedOr(
  learned: CheckOptions['learned'],
  sheet: SquaredSheet,
): Promise<LearnedMap | undefined> {
  if (learned === false) return undefined;
  return (learned ?? seeCopperLearned)(sheet).catch(() => undefined);
}
