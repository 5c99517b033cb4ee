import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { pieceAt } from '../../parts/index.ts';
import type { Traced } from '../../trace/index.ts';
import type { JoinedSheets } from './types.ts';

/** A fold line shows as a line across every strip that runs over it, mm to both sides. */
const atFoldMm = 2;
/** How sure it is that tape over older tape is a seam: both photographs show it. */
const sureSeam = 0.95;

/** What further photographs tell beyond the picture: seams at patches, and no crossing where only a fold runs. */
export function tracedWithSheets(traced: Traced, { seams, flaps }: JoinedSheets, card: Card): Traced {
  const folds = card.flaps.filter(({ id }) => flaps.includes(id)).map(({ fold }) => fold);
  const crossings = traced.crossings.filter(({ at }) => !folds.some((fold) => toLine(at, fold) < atFoldMm));
  const told = seams.flatMap((at) => {
    const piece = pieceAt(traced, at);
    return piece ? [{ at, piece, widthMm: 0.3, gap: 0, seam: sureSeam, glare: 0 }] : [];
  });
  return { ...traced, crossings: [...crossings, ...told] };
}

/** The card with the copper that earlier photographs showed under its patches; what the maker wrote there stays. */
export function cardWithSheets(card: Card, beneath: JoinedSheets['beneath'] | undefined): Card {
  if (!beneath) return card;
  const patches = card.patches.map((patch) =>
    patch.beneath.length > 0 ? patch : { ...patch, beneath: beneath[patch.id] ?? [] },
  );
  return { ...card, patches };
}

function toLine([x, y]: Point, [a, b]: readonly [Point, Point]): number {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  return Math.abs((x - a[0]) * (b[1] - a[1]) - (y - a[1]) * (b[0] - a[0])) / length;
}
