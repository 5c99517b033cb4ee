import type { Build } from './build.ts';
import { drawConditions } from './conditions.ts';
import type { Conditions } from './conditions.ts';
import { bridge, gap, lifted, neck, notLaid, reversed, rimShort, spoil, tight, withCell } from './faults.ts';
import type { Fault } from './faults.ts';
import { harbourNight } from './harbourNight.ts';
import { randomFrom } from './random.ts';

/** One fixture: a build, how it is photographed, and its seed. */
export interface Entry {
  name: string;
  seed: number;
  build: Build;
  conditions: Conditions;
}

const entry = (name: string, seed: number, faults: Fault[], given: Partial<Conditions> = {}): Entry => ({
  name,
  seed,
  build: spoil(harbourNight(), faults),
  conditions: drawConditions(randomFrom(seed), given),
});

const upright = { width: 1500, height: 2000, pxPerMm: 10.4, rollDeg: 4 };

/** Every committed fixture of Harbour Night. */
export function catalogue(): Entry[] {
  return [
    entry('sound', 1, [], { ...upright, paper: 'white', table: 'wood', light: 'window' }),
    entry('gap-1.2', 2, [gap('beam-3', [44, 72], 1.2, 0.15)], {
      ...upright,
      paper: 'white',
      table: 'wood',
      light: 'window',
      rollDeg: -3,
    }),
    entry('gap-1.0', 3, [gap('P-rail', [8, 76], 1.0)], { paper: 'cream', table: 'grey', light: 'ceiling' }),
    entry('gap-1.5', 4, [gap('N-rail', [85.5, 72], 1.5, -0.2)], { paper: 'kraft', table: 'pale' }),
    entry('gap-2.0', 5, [gap('beam-5', [68, 60], 2)], { paper: 'wash', table: 'mat', light: 'desk' }),
    entry('gap-2.5', 6, [gap('P-rail', [60, 16], 2.5, 0.1)], {
      paper: 'white',
      table: 'pale',
      light: 'ceiling',
    }),
    entry('bridge-beams', 7, [bridge([32, 66], [44, 66.6], 1.2, ['beam-2', 'beam-3'])], {
      paper: 'cream',
      table: 'wood',
      light: 'window',
    }),
    entry('bridge-rails', 8, [bridge([86, 96], [94.5, 95.5], 1.5, ['minus', 'plus'])], {
      paper: 'white',
      table: 'mat',
      light: 'desk',
    }),
    entry('reversed-lamp', 9, [reversed('B4')], { paper: 'white', table: 'grey', light: 'window' }),
    entry('lifted-lamp', 10, [lifted('B2', [3.4, 0.4])], { paper: 'cream', table: 'mat', light: 'ceiling' }),
    entry('tight-spot', 11, [tight([20, 52], [29.9, 52], 1.6, 0.6, [30.2, 52])], {
      paper: 'white',
      table: 'wood',
      light: 'ceiling',
    }),
    entry('narrow-neck', 12, [neck('N-rail', [50, 134.5], 0.9), neck('P-rail', [8, 76], 1.3)], {
      paper: 'white',
      table: 'wood',
      light: 'desk',
    }),
    entry('rim-short', 13, [rimShort()], { paper: 'kraft', table: 'grey', light: 'window' }),
    entry('sound-with-cell', 14, [withCell()], { paper: 'cream', table: 'mat', light: 'window' }),
    entry('gap-and-reversed', 15, [gap('beam-1', [20, 88], 1.4), reversed('W2'), withCell()], {
      paper: 'wash',
      table: 'wood',
      light: 'ceiling',
    }),
    entry('half-laid', 16, [notLaid('beam-4'), notLaid('beam-5')], {
      paper: 'white',
      table: 'grey',
      light: 'ceiling',
    }),
  ];
}

/** A sound build under conditions that no committed fixture has. */
export function unseen(seed: number, faults: Fault[] = []): Entry {
  return entry(`unseen-${seed}`, seed, faults);
}
