import { pieceAt } from '../../parts/index.ts';
import type { Point } from '../../geometry/index.ts';
import { keptApart, type Apart } from '../apart.ts';
import { netAt, type Case } from '../case.ts';
import { covered, inLampShadow, sheetAt } from '../covered.ts';
import { distance } from '../distance.ts';
import { atContact } from './atContact.ts';
import { planSigns, type PlanSigns } from '../planSigns.ts';
import type { Finding } from '../types.ts';

/** Of ten told on 77 path-traced photographs five were bridges, of others on photographs kept back fewer. */
const faintly = 0.4;
/** Nearer to copper seen to join the two they are its border, mm. */
const sameMm = 4;

/**
 * Places to look at: thin lines, too faint for the mask, that would join what must stay apart if they are copper. A sliver of
 * which a photograph shows little can short a cell as well as a broad one.
 */
export function faintBridges(found: Case, told: readonly Finding[]): Finding[] {
  const { traced, card } = found;
  const signs = planSigns(card);
  return (traced.faint ?? []).flatMap(({ at, atA, atB, widthMm }) => {
    const [a, b] = [pieceAt(traced, atA), pieceAt(traced, atB)];
    if (!a || !b) return [];
    const nets = [netAt(found, a, atA), netAt(found, b, atB)];
    const apart = keptApart(found, nets[0], nets[1]) ?? plannedApart(signs, atA, atB);
    if (!apart || covered(card, at) || inLampShadow(card, at) || atContact(card, at)) return [];
    if (told.some((other) => distance(other.at, at) < sameMm)) return [];
    return [
      {
        kind: 'bridge' as const,
        at,
        sizeMm: widthMm,
        certainty: faintly,
        evidence: { by: 'faint', value: faintly },
        weight: 'check' as const,
        lamps: [],
        nets,
        sheet: sheetAt(card, at),
        facts: {
          between: apart[0],
          and: apart[1],
          shorts: apart[0] === 'cell+',
          unsure: true,
          faint: true,
        },
      },
    ];
  });
}

/** How far into the copper it is asked what is planned there, mm. */
const inwardMm = 1;

/** The sides of the cell that the plan leads to the copper at two ends, where it is one to each: in parts that gaps leave without a lamp. */
function plannedApart(signs: PlanSigns, atA: Point, atB: Point): Apart | undefined {
  const mm = distance(atA, atB) || 1;
  const inward = (p: Point, q: Point): Point => [
    p[0] + ((p[0] - q[0]) / mm) * inwardMm,
    p[1] + ((p[1] - q[1]) / mm) * inwardMm,
  ];
  const [a, b] = [signs.at(inward(atA, atB)), signs.at(inward(atB, atA))];
  return a !== undefined && b !== undefined && a !== b ? ['cell+', 'cell-'] : undefined;
}
