import type { CardPhoto } from '../card/index.ts';
import { foldWords } from '../words/fold.ts';
import { language } from '../words/language.ts';
import { recordWords as words } from '../words/record.ts';
import type { EncodedImage } from './drawing/types.ts';

/** A photograph on record, with what it shows of the work and the day it was taken. */
export interface StepPhoto {
  name: string;
  step?: string;
  taken?: string;
  image: EncodedImage;
}

/** Longest side of a photograph on record, px: a print of 120 mm at 250 dots an inch. */
export const stepLongestPx = 1200;

type Shows = Pick<CardPhoto, 'sheet' | 'before' | 'after' | 'fold_of' | 'step'>;

/** What a photograph shows, in words: the maker's own, else what the card says of it. */
export function stepOf({ step, sheet, before, after, fold_of }: Shows): string {
  if (step !== undefined) return step;
  if (sheet === 'front') return words.steps.front;
  if (fold_of !== undefined) return foldWords.sheets.spread(fold_of);
  if (sheet !== 'base') return foldWords.sheets.flap(sheet);
  if (before !== undefined) return foldWords.sheets.before(before);
  return after === undefined ? words.steps.base : words.steps.after(after);
}

/** The earliest first; those without a date come before them, in their own order. */
export function byDate<Dated extends { taken?: string }>(photos: readonly Dated[]): Dated[] {
  const timeOf = ({ taken = '' }: Dated) => Date.parse(taken) || -Infinity;
  return [...photos].sort((a, b) => (timeOf(a) === timeOf(b) ? 0 : timeOf(a) - timeOf(b)));
}

/** The day of an ISO date or date and time, as the maker's language writes it. */
export function dayOf(taken: string): string {
  const day = new Date(taken);
  return Number.isNaN(day.getTime()) ? taken : day.toLocaleDateString(language(), { dateStyle: 'long' });
}
