import { afterAll, expect, test } from 'vitest';
import { cardSchema } from '../../src/card/schema.ts';
import { sayPlace } from '../../src/record/sayPlace.ts';
import { chooseLanguage } from '../../src/words/language.ts';
import { measureIn } from '../../src/words/lengths.ts';

/** The module once more: that a unit was asked for is no matter of the other test files of this process. */
const fresh = '../../src/cli/speakAsAsked.ts?fresh';
const { measureAsCard, speakAsAsked, spokenArguments } = (await import(
  fresh
)) as typeof import('../../src/cli/speakAsAsked.ts');

afterAll(async () => {
  measureIn('mm');
  await chooseLanguage('en');
});

const place = () =>
  sayPlace(
    { at: [25.4, 50.8], sheet: 'base' },
    cardSchema.parse({ format: 'foilproof/1', base: { width_mm: 105, height_mm: 148 } }),
  );

test('the unit that the terminal asks for comes before the card’s, and workers are told of it', async () => {
  measureAsCard({ show_inches: true });
  expect(place()).toBe('1.00 in from the left, 2.00 in from the top');
  expect(await speakAsAsked(['check', '--units=mm', 'a.jpg'], {})).toEqual(['check', 'a.jpg']);
  measureAsCard({ show_inches: true });
  expect(place()).toBe('25.4 mm from the left, 50.8 mm from the top');
  await speakAsAsked(['--units', 'inch', '--language', 'de'], {});
  measureAsCard({});
  expect(place()).toBe('1,00 in von links, 2,00 in von oben');
  expect(spokenArguments()).toEqual(['--language', 'de', '--units', 'inch']);
});
