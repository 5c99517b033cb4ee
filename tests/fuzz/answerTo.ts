import { cardSchema, parseCard } from '../../src/card/index.ts';
import { check } from '../../src/check/index.ts';
import { nets } from '../../src/check/nets.ts';
import { verdictOf } from '../../src/net/index.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';
import { paintPlan } from '../../src/plan/index.ts';
import { solveStates } from '../../src/power/index.ts';
import { sayFinding } from '../../src/record/sayFinding.ts';
import { trace } from '../../src/trace/index.ts';
import { FoilproofError } from '../../src/words/index.ts';

/** What a bad input ends with: the sentence that refuses it, or what was made of it. */
export type Answer = { refused: string } | { verdict: string };

const a6 = cardSchema.parse({ format: 'foilproof/1', base: { width_mm: 105, height_mm: 148 } });
/** Longest sentence that still tells; longer ones repeat the input. */
const longestSentence = 1000;

/**
 * Reads a card and builds and solves what it plans.
 * @throws Error where anything but a sentence for the maker came out
 */
export function answerToCard(text: string): Answer {
  return orSentence(() => {
    const card = parseCard(text, 'bad.card.json');
    // A fifth of the usual scale: the same code over fewer pixels.
    const traced = trace(paintPlan(card, 2));
    const { netlist } = nets(traced, card);
    solveStates(netlist, traced, card, { depth: 'states' });
    for (const finding of netlist.findings) sayFinding(finding);
    return { verdict: verdictOf(netlist.findings) };
  });
}

/** Decodes a picture and checks it as an A6 sheet, by the classical eye alone, at a coarse scale. @throws Error where anything but a sentence for the maker came out */
export async function answerToPhoto(bytes: Uint8Array): Promise<Answer> {
  try {
    const photo = await decodePhoto(bytes, 'bad.jpg');
    const { verdict } = await check(photo, a6, { learned: false, depth: 'states', pxPerMm: 4 });
    return { verdict };
  } catch (error) {
    return sentenceOf(error);
  }
}

function orSentence(work: () => Answer): Answer {
  try {
    return work();
  } catch (error) {
    return sentenceOf(error);
  }
}

function sentenceOf(error: unknown): Answer {
  if (!(error instanceof FoilproofError)) throw error;
  const { message } = error;
  if (!/[.!?)]$/.test(message) || message.length > longestSentence)
    throw new Error(`No sentence: ${message.slice(0, 300)}`);
  return { refused: message };
}
