import type { Card } from '../card/index.ts';
import type { Finding, Net } from '../net/index.ts';
import type { PowerReport, StatePower } from '../power/index.ts';
import { contactsJson } from './contactsJson.ts';
import { sayPlace } from './sayPlace.ts';
import { sayFinding } from './sayFinding.ts';
import type { Recordable } from './types.ts';

const round = (value: number, digits: number) => Number(value.toFixed(digits));

/** One object per photograph: what `foilproof check --json` prints. Scripts rely on its keys. */
export function checkJson(checked: Recordable, power: PowerReport) {
  const { photo, verdict, outline, netlist, timingsMs } = checked;
  return {
    photo: photo.name,
    verdict,
    base: { width_mm: checked.card.base.width_mm, height_mm: checked.card.base.height_mm },
    corners_px: outline.cornersPx.map(([x, y]) => [round(x, 2), round(y, 2)]),
    findings: netlist.findings.map((finding) => findingJson(finding, checked.card)),
    nets: netlist.nets.map(netJson),
    states: power.states.map(stateJson),
    contacts: contactsJson(checked),
    sheets: (checked.joined?.fates ?? []).map(sheetJson),
    not_seen: netlist.notSeen,
    timings_ms: Object.fromEntries(
      Object.entries(timingsMs).map(([stage, ms]) => [stage, round(ms ?? 0, 2)]),
    ),
  };
}

export type CheckJson = ReturnType<typeof checkJson>;

type SheetLaid = NonNullable<Recordable['joined']>['fates'][number];

/** A further photograph: what it shows, how it was laid on the base and how far off it still lies. */
function sheetJson({ name, sheet, by, residualMm }: SheetLaid) {
  return { photo: name, sheet, laid_by: by, residual_mm: round(residualMm, 2) };
}

function findingJson(finding: Finding, card: Card) {
  const words = sayFinding(finding);
  return {
    kind: finding.kind,
    x_mm: round(finding.at[0], 2),
    y_mm: round(finding.at[1], 2),
    ...(finding.sizeMm === undefined ? {} : { size_mm: round(finding.sizeMm, 2) }),
    certainty: round(finding.certainty, 3),
    weight: finding.weight,
    sheet: finding.sheet,
    place: sayPlace(finding, card),
    lamps: finding.lamps,
    nets: finding.nets,
    say: words.say,
    do: words.do,
    settle: words.settle,
    ...(finding.checked ? { checked: finding.checked.note } : {}),
  };
}

function netJson(net: Net) {
  return { id: net.id, pieces: net.pieces, pads: net.pads, area_mm2: round(net.areaMm2, 2) };
}

function stateJson(state: StatePower) {
  const lamps = Object.entries(state.lamps).map(([id, lamp]) => [
    id,
    { lit: lamp.lit, mA: round(lamp.mA, 4), look: lamp.look },
  ]);
  return { name: state.name, closed: state.closed, lamps: Object.fromEntries(lamps) as LampsJson };
}

type LampsJson = Record<string, { lit: boolean; mA: number; look: 'lit' | 'dim' | 'dark' }>;
