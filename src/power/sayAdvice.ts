import { decimal } from '../words/numbers.ts';
import { powerWords } from '../words/power.ts';
import { sayState } from '../words/states.ts';
import { figure, lampList, sayBands } from './sayFigures.ts';
import type { Advice } from './types.ts';

/** A piece of advice as a sentence. */
export function sayAdvice(advice: Advice): string {
  const words = powerWords.advice;
  switch (advice.kind) {
    case 'resistor': {
      const { lamps, ohm, bands, ratioAfter, mA } = advice;
      const least = figure(Math.min(...Object.values(mA)), 2);
      return words.resistor(lampList(lamps), ohm, sayBands(bands), decimal(ratioAfter, 1), least);
    }
    case 'split-colours':
      return words['split-colours'](lampList(advice.low), lampList(advice.high));
    case 'fewer-lamps':
      return words['fewer-lamps'](sayState(advice.state), advice.now, advice.most);
    case 'second-cell':
      return words['second-cell'](figure(advice.mANow, 2), figure(advice.mAThen, 2));
    case 'limit-current': {
      const { lamps, mA, ohm, bands, mAThen } = advice;
      return words['limit-current'](lampList(lamps), figure(mA, 2), ohm, sayBands(bands), figure(mAThen, 2));
    }
    case 'which-green':
      return words['which-green'](lampList(advice.lamps));
    case 'cell-too-low':
      return words['cell-too-low'](decimal(advice.volt, 1), lampList(advice.lamps));
  }
}
