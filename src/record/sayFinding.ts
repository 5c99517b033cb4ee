import type { Finding } from '../net/index.ts';
import { recordWords } from '../words/en/record.ts';

/** A finding in words: what is wrong, what to do, and what would settle it. */
export interface FindingWords {
  say: string;
  do: string;
  settle: string;
}

/** What a finding has to say, from its kind and place. */
export function sayFinding({ kind, at, sizeMm }: Finding): FindingWords {
  const place = recordWords.place(`${at[0].toFixed(1)} mm`, `${at[1].toFixed(1)} mm`);
  const size = sizeMm === undefined ? '' : `, ${sizeMm.toFixed(1)} mm`;
  return { say: `${recordWords.kinds[kind]} ${place}${size}.`, do: '', settle: '' };
}
