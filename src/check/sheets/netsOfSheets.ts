import type { Card } from '../../card/index.ts';
import { buildNetlist, ranked, type Netlist } from '../../net/index.ts';
import type { Traced } from '../../trace/index.ts';
import { sheetFindings } from './findings.ts';
import type { JoinedSheets } from './types.ts';
import { cardWithSheets } from './withSheets.ts';

/** Nets of traced copper, with what further sheets tell: copper under patches, photographs that do not fit. */
export function netsOfSheets(traced: Traced, card: Card, joined: JoinedSheets | undefined): Netlist {
  const built = buildNetlist(traced, cardWithSheets(card, joined?.beneath));
  const told = joined ? sheetFindings(joined, card) : [];
  return told.length > 0 ? { ...built, findings: ranked([...told, ...built.findings]) } : built;
}
