import type { Card } from '../card/index.ts';
import { scaleWithin } from '../geometry/index.ts';
import type { Photo } from '../photo/index.ts';
import { findOutline, seeBow, squareUp, turnOutline } from '../sheet/index.ts';
import type { Outline, SquaredSheet } from '../sheet/index.ts';
import { baseMap } from '../sheet/learned/index.ts';
import { colourOn } from './colourOn.ts';
import type { CheckOptions } from './options.ts';
import { bestTurn, tellsTurn } from './turn.ts';

/** A lead under this leaves the turn in doubt. */
const clearLead = 0.1;
/** An outline that is only a guess has no sides to follow. */
const sureOutline = 0.5;

/** Finds the base in the photograph and squares it up. Given corners are taken as they are. */
export async function place(
  photo: Photo,
  card: Card,
  options: CheckOptions,
): Promise<{ outline: Outline; sheet: SquaredSheet }> {
  const outline = options.outline ?? givenCorners(photo, card) ?? (await found(photo, card, options));
  return { outline, sheet: square(photo, card, outline, options.pxPerMm ?? finest(card)) };
}

/** 10 px/mm, less on a sheet larger than A2. */
function finest({ base: { width_mm, height_mm, margin_mm } }: Card): number {
  return scaleWithin(width_mm + 2 * margin_mm, height_mm + 2 * margin_mm, 10);
}

function givenCorners(photo: Photo, card: Card): Outline | undefined {
  if (!card.corners_px) return undefined;
  const own = { cornersPx: card.corners_px, certainty: 1, k1: 0, residualMm: 0 };
  return seeBow(photo, own, sizeOf(card), true);
}

async function found(photo: Photo, card: Card, { learned }: CheckOptions): Promise<Outline> {
  // Where the net cannot be loaded the edges alone must do.
  const map = learned === false ? undefined : await baseMap(photo).catch(() => undefined);
  const outline = await findOutline(photo, sizeOf(card), { baseMap: map });
  if (!outline) return handlesOnly(photo);
  const upright = tellsTurn(card) ? turned(photo, card, outline) : outline;
  return upright.certainty < sureOutline ? { ...upright, bow: undefined } : upright;
}

/** No base was seen: corners to start dragging from, and no certainty at all. */
function handlesOnly({ width: w, height: h }: Photo): Outline {
  const at = (x: number, y: number) => [x * w, y * h] as const;
  return {
    cornersPx: [at(0.15, 0.15), at(0.85, 0.15), at(0.85, 0.85), at(0.15, 0.85)],
    certainty: 0,
    k1: 0,
    residualMm: 0,
  };
}

/** The outline with its corners in the card's order, as plan and lamps tell. */
function turned(photo: Photo, card: Card, outline: Outline): Outline {
  const { turn, lead } = bestTurn(card, colourOn(photo, outline, sizeOf(card)));
  const sure = Math.min(1, Math.max(0, lead / clearLead));
  return {
    ...turnOutline(outline, turn),
    certainty: outline.certainty * (0.4 + 0.6 * sure),
  };
}

function square(photo: Photo, card: Card, outline: Outline, pxPerMm: number): SquaredSheet {
  const { k1, cornersPx, bow } = outline;
  return squareUp(photo, cornersPx, sizeOf(card), { pxPerMm, marginMm: card.base.margin_mm, k1, bow });
}

function sizeOf(card: Card): { width: number; height: number } {
  return { width: card.base.width_mm, height: card.base.height_mm };
}
