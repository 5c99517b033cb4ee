import type { Card } from '../../card/schema.ts';
import { foldOff } from '../../parts/tolerance.ts';
import { foldWords } from '../../words/fold.ts';
import { area, length } from '../../words/lengths.ts';
import type { Meetings } from './useMeetings.ts';

/** Each contact that a flap closes, in words: how much overlaps, or by how much and which way it is missed. */
export function Landings({ card, flap, found }: { card: Card; flap: string; found: Meetings }) {
  const { closing: words } = foldWords;
  const contacts = card.contacts.filter((contact) => contact.flap === flap);
  return (
    <ul className="landings">
      {contacts.map(({ id }) => {
        const own = found.meetings.filter(({ contact }) => contact === id);
        const share = found.tolerances.find(({ contact }) => contact === id)?.share;
        return (
          <li key={id}>
            {sayLanding(id, own)}
            {share !== undefined && (
              <span className="pencil"> {words.tolerance((100 * share).toFixed(0), length(foldOff.mm))}</span>
            )}
          </li>
        );
      })}
    </ul>
  );
}

function sayLanding(id: string, own: Meetings['meetings']): string {
  const { closing: words } = foldWords;
  const missed = own.find(({ missMm }) => missMm > 0);
  if (own.length === 0 || (missed && !Number.isFinite(missed.missMm))) return words.none(id);
  if (missed && missed.direction !== '')
    return words.misses(id, length(missed.missMm), words.sides[missed.direction]);
  return words.meets(id, area(Math.min(...own.map(({ overlapMm2 }) => overlapMm2)), 1));
}
