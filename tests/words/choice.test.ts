import { afterEach, describe, expect, it } from 'vitest';
import { chooseLanguage, languageOf } from '../../src/words/language.ts';
import { length, measureIn } from '../../src/words/lengths.ts';
import { whole } from '../../src/words/numbers.ts';
import { benchWords } from '../../src/words/bench.ts';
import { sayState } from '../../src/words/states.ts';

afterEach(async () => {
  await chooseLanguage('en');
  measureIn('mm');
});

describe('a language', () => {
  it('is spoken once chosen, by all who hold its words, with a decimal comma', async () => {
    await chooseLanguage('de');
    expect(benchWords.verdict.hold({ holding: 2 } as never)).toBe('Halt (2)');
    expect(sayState('stroke 3')).toBe('Strich 3');
    expect(length(12.34)).toBe('12,3 mm');
    expect(whole(29000)).toBe('29.000');
  });
});

describe('the choice of language and unit', () => {
  it('takes the first tag that is known, English else', () => {
    expect(languageOf(['ja-JP', 'de-CH', 'en'])).toBe('de');
    expect(languageOf(['de_AT.UTF-8'])).toBe('de');
    expect(languageOf(['C.UTF-8', ''])).toBe('en');
  });

  it('measures in inches of 25.4 mm (international yard and pound agreement, 1959)', () => {
    measureIn('inch');
    expect(length(25.4)).toBe('1.00 in');
    expect(length(105, 0)).toBe('4.1 in');
  });
});
