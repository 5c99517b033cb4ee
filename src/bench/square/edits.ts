import type { Quad } from '../../geometry/index.ts';
import { turnCorners } from '../../sheet/homography.ts';
import { editCard } from '../state/editCard.ts';
import { bench } from '../state/store.ts';

/** The maker's own corners. */
export function layCorners(corners: Quad): void {
  editCard((card) => ({ ...card, corners_px: [...corners.map(([x, y]) => [x, y])] as Corners }));
}

type Corners = [[number, number], [number, number], [number, number], [number, number]];

/** Reads the sheet from its next side; parts stay at their places on the base. */
export function turnQuarter(): void {
  const corners = bench().shown?.outline.cornersPx;
  if (!corners) return;
  const turned = turnCorners(corners, 1).map(([x, y]) => [x, y]) as Corners;
  editCard((card) => ({
    ...card,
    corners_px: turned,
    base: { ...card.base, width_mm: card.base.height_mm, height_mm: card.base.width_mm },
  }));
}

/** Drops the maker's corners and looks for the base anew. */
export function findAgain(): void {
  editCard(({ corners_px: _dropped, ...card }) => card);
}

export function setSize(width_mm: number, height_mm: number): void {
  editCard((card) => ({ ...card, base: { ...card.base, width_mm, height_mm } }));
}

/** Reads the sheet the other way up; parts stay at their places on the base. */
export function turnHalf(): void {
  const corners = bench().shown?.outline.cornersPx;
  if (corners) layCorners(turnCorners(corners, 2));
}
