import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import { parseCard } from '../card/index.ts';
import type { Card } from '../card/index.ts';
import { cliWords } from '../words/cli.ts';
import { FoilproofError } from '../words/index.ts';
import { measureAsCard } from './speakAsAsked.ts';

/** Reads a card file. @throws FoilproofError when it is not there or a key is wrong */
export async function readCard(path: string): Promise<Card> {
  const text = await readFile(path, 'utf8').catch(() => {
    throw new FoilproofError(cliWords.noFile(path));
  });
  const card = parseCard(text, basename(path));
  measureAsCard(card);
  return card;
}
