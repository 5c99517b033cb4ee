import { powerWords } from '../words/power.ts';
import { FoilproofError } from '../words/index.ts';
import type { Circuit, Element } from './types.ts';

/** Refuses values that no part can have, naming the part. @throws FoilproofError */
export function checkElements({ elements }: Circuit): void {
  const seen = new Set<string>();
  for (const element of elements) {
    if (seen.has(element.id)) throw new FoilproofError(powerWords.twice(element.id));
    seen.add(element.id);
    const wrong = fault(element);
    if (wrong) throw new FoilproofError(wrong);
  }
}

function fault(element: Element): string | undefined {
  switch (element.kind) {
    case 'resistor':
      return within(element.ohm, 0, 1e15) ? undefined : powerWords.badOhm(element.id, element.ohm);
    case 'cell':
      if (!within(element.volt, 0, 100)) return powerWords.badVolt(element.id, element.volt);
      // A cell without internal resistance has no answer once its faces meet.
      return within(element.ohm, 1e-3, 1e6) ? undefined : powerWords.badCellOhm(element.id, element.ohm);
    case 'lamp': {
      const { saturationA, slopeV, ohm } = element.diode;
      const sound = within(saturationA, 1e-100, 1) && within(slopeV, 1e-3, 10) && within(ohm, 1e-3, 1e6);
      if (!sound) return powerWords.badLamp(element.id);
      return within(element.seriesOhm, 0, 1e15)
        ? undefined
        : powerWords.badOhm(element.id, element.seriesOhm);
    }
  }
}

function within(value: number, low: number, high: number): boolean {
  return value >= low && value <= high;
}
