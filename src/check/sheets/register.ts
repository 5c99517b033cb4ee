import type { Card, Flap } from '../../card/index.ts';
import type { CopperMask } from '../../copper/index.ts';
import { insideRing, type Point, type Segment } from '../../geometry/index.ts';
import { apartAtFold, reachesFold, towards } from './acrossFold.ts';
import { matchCopper } from './matchCopper.ts';
import { apply, inverse, ontoSegment, still, type Rigid } from './rigid.ts';
import type { ReadSheet, Registration } from './types.ts';

/** Copper moves a sheet that corners or fold have placed only where it fits better by this share and this much, mm. */
const worthwhile = { share: 0.8, mm: 0.1 };

/** Brings a further sheet's frame onto the base's and says how well it lies there. */
export function register(read: ReadSheet, base: CopperMask, card: Card): Registration {
  const { given } = read;
  if (given.sheet !== 'base') return flapOnto(read, base, flapOf(card, given.sheet));
  const spread = given.fold_of !== undefined && given.fold !== undefined;
  const start = spread ? ontoSegment(given.fold!, flapOf(card, given.fold_of!).fold) : still;
  const { width, height } = base.baseMm;
  const counts = (p: Point) =>
    p[0] > 0 &&
    p[1] > 0 &&
    p[0] < width &&
    p[1] < height &&
    !card.patches.some(({ outline }) => insideRing(p, outline));
  const match = matchCopper(read.seen, base, start, counts);
  const by = spread ? 'fold' : 'corners';
  if (!match) return { by, toBase: start, residualMm: 0, at: [width / 2, height / 2] };
  const { before, best } = match;
  const better =
    best.residualMm < worthwhile.share * before.residualMm &&
    before.residualMm - best.residualMm > worthwhile.mm;
  return better ? { by: 'copper', ...best } : { by, ...before };
}

/** A flap by its fold line, or, where its photograph names none, by its outline as drawn; strips that run over the fold tell how well. */
function flapOnto(read: ReadSheet, base: CopperMask, flap: Flap): Registration {
  const { fold } = read.given;
  const toBase = fold ? ontoSegment(fold, flap.fold) : byOutline(flap);
  const lengthOff = fold ? Math.abs(lengthOf(fold) - lengthOf(flap.fold)) / 2 : 0;
  const inward = towards(flap.fold, middleOf(flap.outline));
  const own = reachesFold(read.seen, fold ?? backBy(toBase, flap.fold), turned(toBase, inward));
  const onBase = reachesFold(base, flap.fold, [-inward[0], -inward[1]]);
  const apart = apartAtFold(onBase, own);
  const [a, b] = flap.fold;
  const along = apart && apart.mm > lengthOff ? apart.along : 0;
  const share = along / (lengthOf(flap.fold) || 1);
  return {
    by: fold ? 'fold' : 'corners',
    toBase,
    residualMm: Math.max(lengthOff, apart?.mm ?? 0),
    at: [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])],
  };
}

function flapOf(card: Card, id: string): Flap {
  return card.flaps.find((flap) => flap.id === id)!;
}

/** The flap's frame begins at the top-left corner of its outline. */
function byOutline({ outline }: Flap): Rigid {
  return {
    ...still,
    dx: Math.min(...outline.map(([x]) => x)),
    dy: Math.min(...outline.map(([, y]) => y)),
  };
}

function backBy(motion: Rigid, [a, b]: Segment): Segment {
  const back = inverse(motion);
  return [apply(back, a), apply(back, b)];
}

/** A direction on the base as it lies in the sheet's own frame. */
function turned({ c, s }: Rigid, [x, y]: Point): Point {
  return [c * x + s * y, -s * x + c * y];
}

function lengthOf([a, b]: Segment): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

function middleOf(ring: readonly Point[]): Point {
  return [
    ring.reduce((sum, [x]) => sum + x, 0) / ring.length,
    ring.reduce((sum, [, y]) => sum + y, 0) / ring.length,
  ];
}
