import type { Paper } from '../record/index.ts';
import { cliWords } from '../words/cli.ts';
import { FoilproofError } from '../words/index.ts';

/** The paper that `--paper` names; A4 unless given. @throws FoilproofError for any other */
export function paperOf(name: string | undefined): Paper {
  const paper = (name ?? 'a4').toLowerCase();
  if (paper === 'a4' || paper === 'letter') return paper;
  throw new FoilproofError(cliWords.badPaper(paper));
}
