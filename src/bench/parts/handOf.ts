import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Suggested } from '../../parts/suggest/index.ts';
import { editCard } from '../state/editCard.ts';
import { bench, change } from '../state/store.ts';
import type { Grip, Tool } from '../surface/tool.ts';
import { acceptAt } from './accept.ts';
import { addContact, addLamp, layCell } from './partEdits.ts';
import { spotAt } from './spots.ts';

export type PartTool = 'pick' | 'lamp' | 'cell' | 'contact';

interface Laying {
  /** The + end that was tapped, while the − end is awaited. */
  plus: Point | undefined;
  setPlus(at: Point | undefined): void;
  /** The card as a drag would leave it. */
  setDraft(card: Card | undefined): void;
  /** Parts that the photograph seems to show; a tap on one takes it. */
  proposed?: Suggested;
}

/** How near a tap picks a part, mm. */
const pickMm = 5;

/** What taps and drags do under each tool. Parts that are there can be dragged under all of them. */
export function handOf(tool: PartTool, laying: Laying): Tool {
  const grab = (at: Point, reach: number) => dragSpot(at, reach, laying);
  if (tool === 'lamp') return { tap: (at) => tapLamp(at, laying), grab };
  if (tool === 'cell') return { tap: tapCell, grab };
  if (tool === 'contact')
    return { tap: (at) => tapContact(at), grab: (at, reach) => grab(at, reach) ?? across(at) };
  return { tap: (at) => pick(at, laying.proposed), grab };
}

function pick(at: Point, proposed: Suggested | undefined): void {
  const spot = spotAt(bench().card, at, pickMm);
  if (spot || !proposed || !acceptAt(proposed, at)) change({ part: spot?.part });
}

function tapLamp(at: Point, { plus, setPlus }: Laying): void {
  if (!plus) return setPlus(at);
  setPlus(undefined);
  editCard((card) => {
    const added = addLamp(card, plus, at, card.lamps.at(-1)?.colour ?? 'white');
    change({ part: added.id });
    return added.card;
  });
}

function tapCell(at: Point): void {
  editCard((card) => layCell(card, at));
  change({ part: 'cell' });
}

function tapContact(at: Point, other?: Point): void {
  editCard((card) => {
    const added = addContact(card, at, other);
    change({ part: added.id });
    return added.card;
  });
}

function dragSpot(at: Point, reach: number, { setDraft }: Laying): Grip | undefined {
  const spot = spotAt(bench().card, at, reach);
  if (!spot) return undefined;
  const [dx, dy] = [spot.at[0] - at[0], spot.at[1] - at[1]];
  let moved: Card | undefined;
  change({ part: spot.part });
  return {
    move: ([x, y]) => {
      moved = spot.moved(bench().card, [x + dx, y + dy]);
      setDraft(moved);
    },
    end: () => {
      setDraft(undefined);
      if (moved) editCard(() => moved as Card);
    },
    cancel: () => setDraft(undefined),
  };
}

/** A drag from one side of an opening to the other lays a contact with both sides named. */
function across(from: Point): Grip {
  let to = from;
  return {
    move: (at) => (to = at),
    end: () => tapContact(from, to),
  };
}
