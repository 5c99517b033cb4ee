import type { TouchUp } from '../../card/index.ts';

/** The stroke that was added at the end, 'taken back' where the last one is gone; undefined where more has changed. */
export function strokeChange(
  before: readonly TouchUp[],
  after: readonly TouchUp[],
): TouchUp | 'taken back' | undefined {
  const [short, long] = before.length < after.length ? [before, after] : [after, before];
  if (long.length - short.length !== 1) return undefined;
  if (!short.every((stroke, i) => JSON.stringify(stroke) === JSON.stringify(long[i]))) return undefined;
  return after.length > before.length ? after[after.length - 1] : 'taken back';
}
