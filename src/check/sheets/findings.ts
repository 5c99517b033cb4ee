import type { Card } from '../../card/index.ts';
import type { Finding } from '../../net/index.ts';
import type { JoinedSheets, SheetFate } from './types.ts';

/** A sheet that lies farther off than this is asked about, mm. */
const askedFromMm = 1;

/** What laying the sheets together has to say: photographs that do not fit, flaps hinged on the wrong side. */
export function sheetFindings({ fates, wrongSide }: JoinedSheets, card: Card): Finding[] {
  const hinged = card.flaps.filter(({ id }) => wrongSide.includes(id));
  return [
    ...fates.filter(({ residualMm }) => residualMm > askedFromMm).map(offRegister),
    ...hinged.map(({ id, fold: [a, b] }): Finding => ({
      kind: 'missed-contact',
      at: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2],
      certainty: 0.9,
      weight: 'holds',
      lamps: [],
      nets: [],
      sheet: id,
      facts: { of: id, foldSide: true },
    })),
  ];
}

function offRegister({ name, sheet, by, residualMm, at }: SheetFate): Finding {
  return {
    kind: 'off-register',
    at,
    sizeMm: residualMm,
    certainty: 0.9,
    weight: 'check',
    lamps: [],
    nets: [],
    sheet,
    facts: { photo: name, by },
  };
}
