import { benchWords } from '../../words/bench.ts';
import { change } from './store.ts';

/** The device has no room, or keeps nothing. */
export function tellNotKept(error: unknown): void {
  const full = error instanceof DOMException && error.name === 'QuotaExceededError';
  const text = full ? benchWords.keep.full : benchWords.keep.failed;
  change({ notice: { tone: 'trouble', text } });
}
