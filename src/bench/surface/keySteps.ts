import { benchWords as words } from '../../words/bench.ts';
import { inchMm, shortLength, unit as chosen } from '../../words/lengths.ts';
import { pointed } from '../../words/numbers.ts';

export interface KeySteps {
  usual: number;
  far: number;
  fine: number;
}

const metric: KeySteps = { usual: 1, far: 10, fine: 0.1 };
const inches: KeySteps = { usual: inchMm / 20, far: inchMm / 2, fine: inchMm / 200 };

/** Steps of an arrow key in the unit of the content; over mm they are round in the unit that lengths are told in. */
export function keySteps(unit: 'mm' | 'px'): KeySteps {
  return unit === 'mm' && chosen() === 'inch' ? inches : metric;
}

/** What the keys do over a picture, in words. */
export function sayKeys(unit: 'mm' | 'px'): string {
  const { usual, far, fine } = keySteps(unit);
  const say = (step: number) => (unit === 'mm' ? shortLength(step, 2) : `${pointed(String(step))} px`);
  return words.surface.keys(say(usual), say(far), say(fine));
}
