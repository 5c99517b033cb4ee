import { benchWords } from '../../words/bench.ts';
import { FoilproofError } from '../../words/error.ts';
import { change } from './store.ts';

/** Shows what went wrong: the error's own sentence where it is meant for the maker. */
export function tellTrouble(error: unknown): void {
  const text = error instanceof FoilproofError ? error.message : benchWords.trouble.program(String(error));
  change({ notice: { tone: 'trouble', text } });
}
