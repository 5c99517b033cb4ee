import { describe, expect, it } from 'vitest';
import { entriesOf, foreign } from './entries.ts';
import { figures, told } from './samples.ts';
import { letters, sameAsEnglish } from './sameAsEnglish.ts';

const english = await entriesOf('en');

/** Common English words that are no words of German or French. */
const englishWords =
  /(?<!\p{L})(the|and|which|with|is|are|were|this|that|from|has|have|its|photograph|strips?|lamps?|tape)(?!\p{L})/iu;

describe.each(foreign)('the catalogue in %s', async (language) => {
  const other = await entriesOf(language);

  it('has the English keys, no more and no fewer', () => {
    expect([...other.keys()].sort()).toEqual([...english.keys()].sort());
  });

  it('has texts where English has texts, and functions of as many values', () => {
    const shape = (entry: unknown) => (typeof entry === 'function' ? entry.length : 'text');
    for (const [key, entry] of english) expect([key, shape(other.get(key))]).toEqual([key, shape(entry)]);
  });

  it('tells each figure and name that the English tells', () => {
    for (const [key, entry] of english) {
      const there = other.get(key) ?? '';
      expect([key, figures(told(key, there))]).toEqual([key, figures(told(key, entry))]);
    }
  });

  it('says nothing in English', () => {
    const left = [...other]
      .map(([key, entry]) => [key, told(key, entry)] as const)
      .filter(([key, said]) => {
        const same = letters(said) !== '' && said === told(key, english.get(key) ?? '');
        return (same && !sameAsEnglish[language].includes(key)) || englishWords.test(said);
      });
    expect(left).toEqual([]);
  });

  it('leaves no key or value out of a sentence', () => {
    for (const [key, entry] of other)
      expect([key, told(key, entry)]).not.toEqual([key, expect.stringMatching(/undefined|NaN/)]);
  });
});
