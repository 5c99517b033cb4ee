import type { Card, Flap } from '../../card/index.ts';
import { mirrorAbout, type Point } from '../../geometry/index.ts';
import { contactPlace } from '../../parts/index.ts';
import { isCopper } from './acrossFold.ts';
import type { Laid } from './compose.ts';
import { after, apply, halfTurn, inverse, type Rigid } from './rigid.ts';

/** Hinged as said a flap meets at most this share of its contacts, hinged along the other edge at least that. */
const few = 1 / 3;
const most = 2 / 3;

/**
 * Finds flaps that would meet their contacts if they were hinged along the other edge, and lays them so, that the rest
 * of the card can be checked.
 */
export function rightSide(laid: readonly Laid[], card: Card): { laid: Laid[]; wrongSide: Flap['id'][] } {
  const wrongSide: Flap['id'][] = [];
  const hinged = laid.map((each) => {
    const flap = card.flaps.find(({ id }) => id === each.read.given.sheet);
    if (!flap) return each;
    const { toBase } = each.registration;
    const other = after(halfTurn(middleOf(flap)), toBase);
    if (meets(each, toBase, flap, card) > few || meets(each, other, flap, card) < most) return each;
    wrongSide.push(flap.id);
    return { ...each, registration: { ...each.registration, toBase: other } };
  });
  return { laid: hinged, wrongSide };
}

/** Share of a flap's contacts over which its copper lies when it is closed; 1 where it has none. */
function meets({ read }: Laid, toBase: Rigid, flap: Flap, { contacts }: Card): number {
  const own = contacts.filter((contact) => contact.flap === flap.id);
  if (own.length === 0) return 1;
  const open = mirrorAbout(flap.fold);
  const toOwn = inverse(toBase);
  const met = own.filter((contact) => isCopper(read.seen, apply(toOwn, open(contactPlace(contact)))));
  return met.length / own.length;
}

function middleOf({ outline }: Flap): Point {
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  return [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
}
