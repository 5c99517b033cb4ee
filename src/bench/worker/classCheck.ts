import type { Card } from '../../card/index.ts';
import { renewFrom } from '../../check/index.ts';
import type { Finding, Verdict } from '../../net/index.ts';
import { decodePhotoInBrowser } from '../../photo/decodeBrowser.ts';
import { benchWords } from '../../words/bench.ts';
import { FoilproofError } from '../../words/error.ts';

/** Calls of the classroom. None of them touches the photograph on the bench. */
export interface ClassCalls {
  /** One of many cards of the plan at hand. */
  classCheck: {
    ask: { card: Card; name: string; file: Blob };
    answer: { verdict: Verdict; findings: Finding[] };
  };
}

/**
 * Checks one photograph by itself against a card's plan and parts; nothing of it stays here.
 * @throws FoilproofError where it is no photograph, or cannot be read well enough for a verdict
 */
export async function classCheck({ card, name, file }: ClassCalls['classCheck']['ask']) {
  const photo = await decodePhotoInBrowser(file, name);
  const checked = await renewFrom('square', { photo, again: [], card }, { depth: 'states' });
  if (checked.outline.certainty < 0.5) throw new FoilproofError(benchWords.square.unsure);
  if (checked.mask.readable < 0.5) throw new FoilproofError(benchWords.unreadable);
  return { verdict: checked.verdict, findings: checked.netlist.findings };
}
