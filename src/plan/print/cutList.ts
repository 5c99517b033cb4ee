import type { Card, PlanStrip } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { distanceToRibbon, lengthOf, segmentsOf } from '../strip/ribbon.ts';

export interface CutLine {
  order: number;
  id: string;
  widthMm: number;
  /** Length as it lies. */
  lengthMm: number;
  folds: number;
  joins: number;
  /** Length to cut: as it lies, with what folds and overlaps take. */
  cutMm: number;
  /** Split along its length from wider tape. */
  split: boolean;
}

export interface CutList {
  lines: CutLine[];
  /** Tape off the roll, mm, by width of strip: halves of one length count once for two strips. */
  byWidth: { widthMm: number; cutMm: number; rollMm: number }[];
  totalRollMm: number;
}

/** A join wants an overlap of at least the tape's width; folding a corner over and back takes as much. Common practice. */
const OVERLAP_PER_WIDTH = 1;
const FOLD_PER_WIDTH = 1;
const JOIN_REACH_MM = 0.5;

/**
 * What to cut, in the order of laying.
 * @param rollMm width of the tape at hand
 */
export function cutList(card: Card, rollMm: number): CutList {
  const strips = card.plan?.strips ?? [];
  const lines = strips.map((strip, k) => cutLine(strip, k + 1, strips, rollMm));
  const widths = [...new Set(lines.map(({ widthMm }) => widthMm))].sort((a, b) => b - a);
  const byWidth = widths.map((widthMm) => {
    const cutMm = lines.filter((l) => l.widthMm === widthMm).reduce((sum, l) => sum + l.cutMm, 0);
    const abreast = Math.max(1, Math.floor(rollMm / widthMm + 1e-9));
    return { widthMm, cutMm, rollMm: cutMm / abreast };
  });
  return { lines, byWidth, totalRollMm: byWidth.reduce((sum, w) => sum + w.rollMm, 0) };
}

function cutLine(strip: PlanStrip, order: number, all: PlanStrip[], rollMm: number): CutLine {
  const lengthMm = lengthOf(strip.path);
  const folds = foldsOf(strip.path);
  const joins = [strip.path[0], strip.path[strip.path.length - 1]].filter((end) =>
    meetsOther(end, strip, all),
  ).length;
  const w = strip.width_mm;
  return {
    order,
    id: strip.id,
    widthMm: w,
    lengthMm,
    folds,
    joins,
    cutMm: Math.ceil(lengthMm + w * (FOLD_PER_WIDTH * folds + OVERLAP_PER_WIDTH * joins)),
    split: w <= rollMm / 2,
  };
}

/** Bends of more than 20 degrees; less is laid without a fold. */
function foldsOf(path: readonly Point[]): number {
  const headings = segmentsOf(path).map(([a, b]) => Math.atan2(b[1] - a[1], b[0] - a[0]));
  return headings.slice(1).filter((h, k) => Math.cos(h - headings[k]) < Math.cos(Math.PI / 9)).length;
}

function meetsOther(end: Point, strip: PlanStrip, all: PlanStrip[]): boolean {
  return all.some(
    (other) =>
      other !== strip &&
      other.net === strip.net &&
      distanceToRibbon(end, { path: other.path, widthMm: other.width_mm }) < JOIN_REACH_MM,
  );
}
