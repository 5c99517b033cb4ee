import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { flapAlong, netAt, patchOver, snap, type Snapped } from '../../plan/index.ts';
import { handOf } from '../parts/handOf.ts';
import { pair } from '../parts/partEdits.ts';
import { editCard } from '../state/editCard.ts';
import { bench } from '../state/store.ts';
import type { Grip, Tool } from '../surface/tool.ts';
import type { Picked } from './picked.ts';
import { addFlap, addPatch, addStrip, stripsOf } from './planEdits.ts';
import { pickAt, planSpotAt } from './planSpots.ts';

export type PlanTool = 'pick' | 'strip' | 'lamp' | 'cell' | 'contact' | 'patch' | 'flap' | 'artwork';

/** A strip under way. */
export interface Draft {
  path: Point[];
  net: string;
  widthMm: number;
}

/** What the plan's tools work on besides the card. */
export interface Desk {
  draft: Draft;
  setDraft(draft: Draft): void;
  settled(by: Snapped | undefined): void;
  pick(picked: Picked | undefined): void;
  plus: Point | undefined;
  setPlus(at: Point | undefined): void;
  /** The card as a drag would leave it. */
  setMoved(card: Card | undefined): void;
  /** A drag over bare paper, as a box from corner to corner. */
  setBox(box: readonly [Point, Point] | undefined): void;
}

/** How near a tap picks, mm. */
const pickMm = 4;
/** A tap this near the last place ends the strip, mm. */
const endMm = 1.5;

/** What taps and drags do under each tool. What is there can be dragged under all of them, but not while a strip is drawn. */
export function planTool(tool: PlanTool, desk: Desk): Tool {
  const grab = (at: Point, reach: number) => dragSpot(at, reach, desk);
  if (tool === 'strip') {
    return {
      tap: (at) => tapStrip(at, desk),
      grab: (at, reach) => (desk.draft.path.length ? undefined : grab(at, reach)),
    };
  }
  if (tool === 'patch') return { grab: (at, reach) => grab(at, reach) ?? dragBox(at, desk, layPatchOver) };
  if (tool === 'flap') return { grab: (at, reach) => grab(at, reach) ?? dragBox(at, desk, hingeFlap) };
  if (tool === 'pick') return { tap: (at) => desk.pick(pickAt(bench().card, at, pickMm)), grab };
  if (tool === 'artwork') return {};
  const part = handOf(tool, { plus: desk.plus, setPlus: desk.setPlus, setDraft: desk.setMoved });
  return {
    tap: part.tap,
    grab: (at, reach) => grab(at, reach) ?? (tool === 'contact' ? part.grab?.(at, reach) : undefined),
  };
}

function tapStrip(at: Point, desk: Desk): void {
  const { card } = bench();
  const { path, net, widthMm } = desk.draft;
  const last = path.at(-1);
  if (last && path.length > 1 && Math.hypot(last[0] - at[0], last[1] - at[1]) < endMm)
    return finishStrip(desk);
  const others = stripsOf(card).filter((strip) => strip.net !== net);
  const settled = snap(at, last, widthMm, card, others, card.limits.clearance_mm + 1);
  desk.settled(settled);
  desk.setDraft({
    ...desk.draft,
    net: last ? net : (netAt(card, settled.at) ?? net),
    path: [...path, settled.by === 'none' ? rounded(settled.at) : settled.at],
  });
}

/** A place that nothing draws stands on a half of a millimetre. */
const rounded = ([x, y]: Point): Point => [Math.round(2 * x) / 2, Math.round(2 * y) / 2];

/** Lays the strip under way down, if it has come to anything. */
export function finishStrip({ draft, setDraft, pick, settled }: Desk): void {
  const { path, net, widthMm } = draft;
  if (path.length < 2) return;
  editCard((card) => {
    const added = addStrip(card, { net, width_mm: widthMm, path: path.map(pair) });
    pick({ kind: 'strip', id: added.id });
    return added.card;
  });
  settled(undefined);
  setDraft({ ...draft, path: [] });
}

function dragSpot(at: Point, reach: number, { setMoved, pick }: Desk): Grip | undefined {
  const spot = planSpotAt(bench().card, at, reach);
  if (!spot) return undefined;
  const [dx, dy] = [spot.at[0] - at[0], spot.at[1] - at[1]];
  let moved: Card | undefined;
  pick(spot.picked);
  return {
    move: ([x, y]) => {
      moved = spot.moved(bench().card, [x + dx, y + dy]);
      setMoved(moved);
    },
    end: () => {
      setMoved(undefined);
      if (moved) editCard(() => moved as Card);
    },
    cancel: () => setMoved(undefined),
  };
}

function dragBox(from: Point, desk: Desk, lay: (from: Point, to: Point, desk: Desk) => void): Grip {
  let to = from;
  return {
    move: (at) => {
      to = at;
      desk.setBox([from, to]);
    },
    end: () => {
      desk.setBox(undefined);
      lay(from, to, desk);
    },
    cancel: () => desk.setBox(undefined),
  };
}

function layPatchOver(from: Point, to: Point, { pick }: Desk): void {
  editCard((card) => {
    const patch = patchOver(card, from, to);
    if (!patch) return card;
    const added = addPatch(card, patch);
    pick({ kind: 'patch', id: added.id });
    return added.card;
  });
}

function hingeFlap(from: Point, to: Point, { pick }: Desk): void {
  editCard((card) => {
    const flap = flapAlong(card, from, to);
    if (!flap) return card;
    const added = addFlap(card, flap);
    pick({ kind: 'flap', id: added.id });
    return added.card;
  });
}
