import { classroomWords as words } from '../../words/classroom.ts';
import { findingWords } from '../../words/findings.ts';
import type { Tally } from './tally.ts';

/** The tally in words: how many cards of each verdict, and the commonest fault. */
export function sayTally({ total, verdicts, faults }: Tally): { counts: string[]; commonest: string } {
  const counts = (Object.keys(verdicts) as (keyof typeof verdicts)[])
    .filter((key) => verdicts[key] > 0)
    .map((key) => words.counted(words.verdicts[key], verdicts[key]));
  const [most] = faults;
  const commonest = most ? words.commonest(findingWords.names[most.kind], most.cards, total) : words.noFault;
  return { counts, commonest };
}
