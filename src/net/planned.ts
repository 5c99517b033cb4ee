import type { PlanStrip } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import { pieceAt } from '../parts/index.ts';
import type { Apart } from './apart.ts';
import { lampOver, toSegment, type Case } from './case.ts';
import { insideRing } from './inside.ts';
import { samples } from './joins.ts';

const stepMm = 0.25;

/** A planned strip laid over what was built: the piece under each of its samples. */
export interface LaidStrip {
  strip: PlanStrip;
  places: Point[];
  pieces: number[];
  /** Share of the countable samples that lie on copper. */
  share: number;
}

/** Each planned strip of the base, sampled along its path against the built copper. */
export function laidStrips({ traced, card }: Pick<Case, 'traced' | 'card'>): LaidStrip[] {
  return (card.plan?.strips ?? [])
    .filter(({ on }) => on === 'base')
    .map((strip) => {
      const places = samples(strip.path, stepMm);
      const pieces = places.map((p) => pieceAcross(traced, p, strip));
      const on = pieces.filter((piece) => piece > 0).length;
      return { strip, places, pieces, share: on / places.length };
    });
}

/** The piece at a place of a planned strip, looked for across the strip's half width so that a strip laid askew still counts. */
function pieceAcross(traced: Case['traced'], p: Point, strip: PlanStrip): number {
  const here = pieceAt(traced, p);
  if (here) return here;
  const reach = strip.width_mm * 0.35;
  for (const [dx, dy] of [
    [reach, 0],
    [-reach, 0],
    [0, reach],
    [0, -reach],
  ]) {
    const piece = pieceAt(traced, [p[0] + dx, p[1] + dy]);
    if (piece) return piece;
  }
  return 0;
}

/** The piece on which most of a strip lies, with a place well on it; undefined while it is hardly laid. */
function mainPiece({ places, pieces, share }: LaidStrip): { piece: number; at: Point } | undefined {
  if (share < 0.3) return undefined;
  const counts = new Map<number, number>();
  for (const piece of pieces) if (piece) counts.set(piece, (counts.get(piece) ?? 0) + 1);
  const [piece] = [...counts].sort((a, b) => b[1] - a[1])[0];
  const on = places.filter((_, k) => pieces[k] === piece);
  return { piece, at: on[on.length >> 1] };
}

/** One pair for each two planned nets whose strips lie on one built net. */
export function plannedPairs(found: Case): Apart[] {
  const byNet = new Map<string, { piece: number; at: Point; name: string }[]>();
  for (const laid of laidStrips(found)) {
    const main = mainPiece(laid);
    if (!main) continue;
    const list = byNet.get(laid.strip.net) ?? [];
    list.push({ ...main, name: laid.strip.id });
    byNet.set(laid.strip.net, list);
  }
  const netOf = (piece: number) => found.wiring.netOfPiece[piece];
  const nets = [...byNet.values()];
  return nets.flatMap((as, k) =>
    nets.slice(k + 1).flatMap((bs) => {
      for (const a of as) {
        const b = bs.find(({ piece }) => netOf(piece) === netOf(a.piece));
        if (b) return [{ a, b, why: 'plan' as const, lamps: [] }];
      }
      return [];
    }),
  );
}

/** A stretch of a planned strip that no copper covers, between stretches that it does. */
export interface PlannedOpen {
  strip: PlanStrip;
  at: Point;
  mm: number;
  a: number;
  b: number;
}

/** Openings in planned strips, those under lamps, the cell and patches left out. */
export function plannedOpens(found: Case): PlannedOpen[] {
  const { card } = found;
  return laidStrips(found).flatMap((laid) => {
    const opens: PlannedOpen[] = [];
    let last = -1;
    laid.pieces.forEach((piece, k) => {
      if (!piece) return;
      if (last >= 0 && k - last > 1) {
        const at = laid.places[(k + last) >> 1];
        const mm = (k - last - 1) * stepMm;
        const a = laid.pieces[last];
        if (!hidden(found, at) && !lampOver(card, at)) opens.push({ strip: laid.strip, at, mm, a, b: piece });
      }
      last = k;
    });
    return opens;
  });
}

/** Whether the cell or a patch covers a place. */
export function hidden({ card }: Pick<Case, 'card'>, at: Point): boolean {
  const under = card.cell && Math.hypot(at[0] - card.cell.at[0], at[1] - card.cell.at[1]) < 11;
  return Boolean(under) || card.patches.some(({ outline }) => insideRing(at, outline));
}

/** Whether a planned strip runs through a place. */
export function plannedAt({ card }: Pick<Case, 'card'>, at: Point): boolean {
  return (card.plan?.strips ?? []).some(({ path, width_mm }) =>
    path.some((p, k) => k > 0 && toSegment(at, path[k - 1], p) <= width_mm / 2),
  );
}
