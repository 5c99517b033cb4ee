import type { Card, PlanStrip } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { certain } from '../../net/index.ts';
import type { Finding } from '../../net/index.ts';
import { cellTable } from '../../power/cellTable.ts';
import type { Traced } from '../../trace/index.ts';
import type { Ribbon } from '../strip/ribbon.ts';
import { lengthOf } from '../strip/ribbon.ts';
import { extraCopper } from './extra.ts';
import { shiftedLamps } from './lampPlaces.ts';
import { ownership } from './ownership.ts';
import { LEAST_SHIFT_MM, type Cover } from './standing.ts';
import { standingsOf } from './standings.ts';
import type { PlanComparison, StripStanding } from './types.ts';

/** Fewer than this share of the strips laid: the card is half built, and what is not laid is no fault. */
const FINISHED = 0.7;
const LAMP_BODY_MM = 3;
/** Chance that a strip is missing where the photograph is burnt out or black: it asks for a look. */
const BLIND = 0.4;
/** A hand lays a strip this near to its plan: copper so near belongs to it. */
const OWN_SLACK_MM = 0.8;

/**
 * The build against the card's plan, in the base's frame (flaps as photographed open): strips and lamps. Gaps and bridges
 * are told by the nets, which know the plan too.
 */
export function comparePlan(traced: Traced, card: Card): PlanComparison {
  const strips = card.plan?.strips ?? [];
  const covers = coversOf(card);
  const ribbons = strips.map(ribbonOf);
  const owners = ownership(ribbons, OWN_SLACK_MM, traced);
  const standings = standingsOf(strips, owners, covers, traced);
  const seen = standings.filter(({ standing }) => standing !== 'unseen' && standing !== 'blind');
  const laid = seen.filter(({ standing }) => standing === 'laid' || standing === 'shifted').length;
  const halfBuilt = laid < FINISHED * seen.length;
  return {
    strips: standings,
    progress: { laid, of: strips.length },
    halfBuilt,
    findings: [
      ...standings.flatMap((standing, k) => stripFinding(strips[k], standing, halfBuilt, standings)),
      ...extraStrips(traced, card, strips, standings),
      ...shiftedLamps(card),
    ].map(certain),
  };
}

function ribbonOf(strip: PlanStrip): Ribbon {
  return { path: strip.path, widthMm: strip.width_mm };
}

function coversOf({ lamps, cell }: Card): Cover[] {
  const covers = lamps.map(({ plus, minus }) => ({
    at: [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2] as Point,
    radiusMm: LAMP_BODY_MM,
  }));
  return cell ? [...covers, { at: cell.at, radiusMm: cellTable[cell.kind].diameterMm / 2 + 0.5 }] : covers;
}

/**
 * Evidence of a shift: a small one may be the sheet's own bow, one of this many mm and more is the strip's. Where as many
 * strips lie off alike, within so many mm of each other, the sheet is bowed or its corners are off.
 */
const SURE_SHIFT_MM = 2.4;
const ALIKE = { strips: 3, mm: 1.5 };
const DOUBTFUL = 0.3;
const SURE = 0.9;

function shiftEvidence({ shiftMm: [dx, dy] }: StripStanding, all: readonly StripStanding[]): number {
  const alike = all.filter(
    ({ standing, shiftMm }) =>
      standing === 'shifted' && Math.hypot(shiftMm[0] - dx, shiftMm[1] - dy) <= ALIKE.mm,
  );
  if (alike.length >= ALIKE.strips) return DOUBTFUL;
  const over = (Math.hypot(dx, dy) - LEAST_SHIFT_MM) / (SURE_SHIFT_MM - LEAST_SHIFT_MM);
  return DOUBTFUL + (SURE - DOUBTFUL) * Math.min(1, Math.max(0, over));
}

function stripFinding(
  strip: PlanStrip,
  own: StripStanding,
  halfBuilt: boolean,
  all: readonly StripStanding[],
): Finding[] {
  const { standing, shiftMm } = own;
  const at = middleOf(strip.path);
  const common = { lamps: [], nets: [strip.net], sheet: strip.on };
  if (standing === 'shifted') {
    const [dxMm, dyMm] = shiftMm;
    return [
      {
        ...common,
        kind: 'shifted-strip',
        at: [at[0] + dxMm, at[1] + dyMm],
        sizeMm: Math.hypot(dxMm, dyMm),
        certainty: shiftEvidence(own, all),
        weight: 'check',
        facts: { strip: strip.id, dxMm, dyMm },
      },
    ];
  }
  if (standing === 'blind')
    return [
      {
        ...common,
        kind: 'missing-strip',
        at,
        sizeMm: lengthOf(strip.path),
        certainty: BLIND,
        weight: 'check',
        facts: { strip: strip.id, stillToLay: false },
      },
    ];
  if (standing !== 'to-lay') return [];
  return [
    {
      ...common,
      kind: 'missing-strip',
      at,
      sizeMm: lengthOf(strip.path),
      certainty: 0.95,
      weight: halfBuilt ? 'note' : 'holds',
      facts: { strip: strip.id, stillToLay: halfBuilt },
    },
  ];
}

function extraStrips(traced: Traced, card: Card, strips: PlanStrip[], standings: StripStanding[]): Finding[] {
  const moved = strips.map((strip, k) => {
    const [dx, dy] = standings[k].shiftMm;
    return { path: strip.path.map(([x, y]): Point => [x + dx, y + dy]), widthMm: strip.width_mm };
  });
  const own = [...card.flaps, ...card.patches].flatMap(({ strips: s }) =>
    s.map(({ path, width_mm }) => ({ path, widthMm: width_mm })),
  );
  const legs = card.lamps.map(({ plus, minus }) => ({ path: [plus, minus], widthMm: 4 }));
  const nest = card.cell ? [cellDisc(card.cell.at, cellTable[card.cell.kind].diameterMm)] : [];
  const known = [...strips.map(ribbonOf), ...moved, ...own, ...legs, ...nest];
  return extraCopper(traced, card, known).map((extra) => ({
    kind: 'extra-strip' as const,
    at: extra.at,
    sizeMm: extra.lengthMm,
    certainty: extra.sure >= 0.8 ? 0.85 : 0.3,
    weight: 'check' as const,
    lamps: [],
    nets: [],
    sheet: 'base',
    facts: { piece: extra.piece, areaMm2: extra.lengthMm * extra.widthMm },
  }));
}

/** A disc as a very short, very wide ribbon with a corner in it. */
function cellDisc(at: Point, diameterMm: number): Ribbon {
  return { path: [[at[0] - 0.1, at[1]], at, [at[0] + 0.1, at[1]]], widthMm: diameterMm };
}

/** The place half way along a path. */
function middleOf(path: readonly Point[]): Point {
  let left = lengthOf(path) / 2;
  for (let k = 1; k < path.length; k++) {
    const [a, b] = [path[k - 1], path[k]];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (length >= left && length)
      return [a[0] + ((b[0] - a[0]) * left) / length, a[1] + ((b[1] - a[1]) * left) / length];
    left -= length;
  }
  return path[path.length - 1];
}
