import type { Point } from '../geometry/index.ts';
import { blindBeside } from './blindBeside.ts';
import type { Case } from './case.ts';
import { between, distance, toSegment } from './distance.ts';
import { isBlind, isStrange } from '../trace/index.ts';
import type { Crossing } from '../trace/index.ts';
import { covered, onSheet } from './covered.ts';
import { facingEnds } from './facing.ts';
import { lackingSide } from './lacking.ts';
import { plannedOpens, plannedPartings } from './laidStrips.ts';
import { openCrossings, openFrom, sidesOf } from './openings.ts';

/** A break that may be one: the two sides of it, and how likely paper shows there. */
export interface Break {
  at: Point;
  mm: number;
  /** Islands on its two sides, the same one where the mask runs on or a second way holds them together. */
  a: number;
  b: number;
  /** 0..1: that paper shows there. */
  paper: number;
  /** 0..1: that a strip was meant to run on there; 1 by the plan. */
  meant: number;
  /** It lies on a planned strip. */
  planned: boolean;
  /** The mask is open, and the picture shows paper from side to side. */
  seen: boolean;
  by: 'cut' | 'facing' | 'starved' | 'plan' | 'unsure' | 'fine';
  /** The copper stage saw it as a cut right across copper. */
  opened?: boolean;
}

type Found = Omit<Break, 'planned' | 'seen'>;

/** Breaks nearer than this to each other are one, mm. */
const sameMm = 3;
/** A finger's breadth round a join that the maker has settled, mm. */
const tapMm = 3.5;
/** Chance that paper shows where the picture shows nothing. */
const blindPaper = 0.45;
/** A planned strip may stay open so far before it counts as not laid there, mm. */
const mostMm = 12;

/** Every place where a strip may be broken, each once, the best told first. */
export function breaks(found: Case): Break[] {
  const all = [
    ...[
      ...plannedBreaks(found),
      ...openedBreaks(found),
      ...cutBreaks(found),
      ...facingBreaks(found),
      ...starvedBreaks(found),
    ].map((each) => unlessBlind(found, each)),
    ...unsureBreaks(found),
  ];
  const kept: Break[] = [];
  /** How surely paper was seen where a planned break was moved to. */
  const moved = new Map<Break, number>();
  for (const each of all) {
    if (covered(found.card, each.at) || !onSheet(found.traced, found.card, each.at)) continue;
    if (found.card.joins.some(({ at, conducts }) => conducts && distance(at, each.at) < tapMm)) continue;
    // Where a net comes nearest says nothing beside a break that is seen between the same two.
    if (each.by === 'starved' && kept.some((other) => sameNets(found, other, each))) continue;
    const twin = kept.find(({ at }) => distance(at, each.at) < sameMm);
    if (!twin)
      kept.push({ ...each, seen: false, planned: each.by === 'plan' || isPlanned(found.card, each.at) });
    else if (
      twin.by === 'plan' &&
      (each.by === 'cut' || each.by === 'facing') &&
      each.paper > (moved.get(twin) ?? 0)
    ) {
      Object.assign(twin, placeOf(each), { paper: Math.max(twin.paper, each.paper) });
      moved.set(twin, each.paper);
    }
  }
  return kept.map((each) => ({ ...each, seen: paperSeen(found.traced, each) }));
}

function sameNets({ wiring: { netOfIsland } }: Case, one: Found, two: Found): boolean {
  const nets = ({ a, b }: Found) => [netOfIsland[a], netOfIsland[b]].sort().join();
  return nets(one) === nets(two);
}

/** An opening at least so wide, mm, shows the colour of what lies in it. */
const showsColourMm = 0.75;

/** Copper of which the net is less sure in the mean, of 1, is tape that it hardly knows: what it leaves out of it says little. */
const knownCopper = 0.5;

/**
 * What the mask leaves open may be copper all the same where the picture is burnt out or black, where it does not look
 * like the paper beside it, or where the copper on its sides is hardly known as such: nobody can tell.
 */
function unlessBlind({ traced, wiring: { graph } }: Case, each: Found): Found {
  const sure = [each.a, each.b].map((island) => traced.pieces[graph.islands[island].piece - 1].sure);
  if (Math.min(...sure) < knownCopper) return unsure(each);
  if (each.by === 'cut') return each;
  const strange = each.mm >= showsColourMm && !paperSeen(traced, each) && isStrange(traced, each.at);
  return strange || isBlind(traced, each.at) ? unsure(each) : each;
}

const unsure = (each: Found): Found => ({ ...each, paper: Math.min(each.paper, blindPaper), by: 'unsure' });

/** The seen place and size are truer than the plan's samples. */
function placeOf({ at, mm, a, b }: Found): Pick<Break, 'at' | 'mm' | 'a' | 'b'> {
  return { at, mm, a, b };
}

function plannedBreaks({ laid, traced, wiring: { graph } }: Case): Found[] {
  return [...plannedOpens(laid), ...plannedPartings(laid, traced)]
    .filter(({ mm }) => mm <= mostMm)
    .map(({ at, mm, a, b }) => {
      const sides = { a: graph.islandAt(a.piece, a.at), b: graph.islandAt(b.piece, b.at) };
      return { at, mm, ...sides, paper: paperOf(mm, sides.a !== sides.b), meant: 1, by: 'plan' as const };
    });
}

/** An opening wider than this, mm, is as often something that lies over the strip, or tape not known as such, as a gap. */
export const wideMm = 4;

/** An opening round which copper still leads is as likely a flaw of the mask. */
function paperOf(mm: number, parts: boolean): number {
  if (!parts) return mm >= 1 ? 0.45 : 0.3;
  if (mm > wideMm) return 0.6;
  return mm >= 0.5 ? 0.95 : 0.6;
}

/** Whether the picture itself shows paper from side to side where the mask is open. */
function paperSeen({ crossings }: Case['traced'], { at, mm }: Pick<Found, 'at' | 'mm'>): boolean {
  const reach = Math.max(1.5, mm / 2 + 1);
  return crossings.some(
    (each) => each.other !== undefined && each.gap >= 0.5 && distance(each.at, at) < reach,
  );
}

/** Cuts that the copper stage saw right across a strip. */
function openedBreaks(found: Case): Found[] {
  const { graph } = found.wiring;
  return found.traced.crossings.flatMap((crossing) => {
    const { at, piece, other, widthMm: mm, gap: paper, opened } = crossing;
    const sides = sidesOf(crossing);
    if (!opened || other === undefined || !sides) return [];
    const [a, b] = [graph.islandAt(piece, sides[0]), graph.islandAt(other, sides[1])];
    return [{ at, mm, a, b, paper, meant: meantAt(found, at), by: 'facing' as const, opened }];
  });
}

/** Seen breaks at which the graph is already parted. */
function cutBreaks(found: Case): Found[] {
  const { graph } = found.wiring;
  return openCrossings(found.traced, found.card).flatMap((crossing) => {
    const { at, piece, widthMm: mm, gap: paper } = crossing;
    const places = sidesOf(crossing);
    const parted = graph.cuts.find((each) => each.piece === piece && distance(each.at, at) < 0.1);
    const sides = places?.map((p) => graph.islandAt(piece, p)) ?? parted?.sides.map((n) => graph.islandOf[n]);
    if (!sides) return [];
    const cut = { at, mm, a: sides[0], b: sides[1], paper, meant: meantAt(found, at), by: 'cut' as const };
    return [halfSeen(found, crossing) || burntRound(found, crossing) ? unsure(cut) : cut];
  });
}

/** Less of the strip's width than this is seen: the rest is lost in the glare that lies beside it. */
const halfWidth = 0.55;

/** A strip of which the mask has but half, by a place that is burnt out or black: its break may be glare like its missing side. */
function halfSeen({ traced }: Case, { at, piece, stripMm = Infinity }: Crossing): boolean {
  const usual = traced.pieces[piece - 1]?.widthMm ?? 0;
  if (stripMm >= halfWidth * usual) return false;
  return blindBeside(traced, at);
}

/** A cut that is burnt out with the tape on a side of it: mirror and paper look alike there. */
function burntRound({ traced }: Case, crossing: Crossing): boolean {
  return isBlind(traced, crossing.at) && (sidesOf(crossing) ?? []).some((side) => isBlind(traced, side));
}

/** Facing ends with an opening that the mask shows. The picture's own word on it counts where it has one. */
function facingBreaks(found: Case): Found[] {
  const { traced, wiring } = found;
  return facingEnds(traced).map(({ a, b, at, mm, match }) => {
    const crossing = traced.crossings.find((c) => c.other !== undefined && distance(c.at, at) < 1.5);
    const paper = Math.max(crossing?.gap ?? 0, mm >= Math.max(0.5, traced.smallestGapMm) ? 0.85 : 0.55);
    return {
      at,
      mm,
      a: wiring.graph.islandAt(a.piece, a.at),
      b: wiring.graph.islandAt(b.piece, b.at),
      paper,
      meant: Math.max(match, found.card.plan ? meantAt(found, at) * match : match),
      by: 'facing' as const,
    };
  });
}

/**
 * A lamp with only one side fed lacks the net of the other: where that net comes nearest to the cell's is the likeliest
 * break, even where no two ends face each other.
 */
function starvedBreaks(found: Case): Found[] {
  const { card, traced, wiring } = found;
  const { netOf, netOfIsland, graph } = wiring;
  const wanted = new Set<string>();
  for (const lamp of card.lamps) {
    const side = lackingSide(found, lamp);
    const [own, cell] = [netOf[`${lamp.id}${side}`], netOf[`cell${side}`]];
    if (side !== 'both' && own && cell) wanted.add(`${own} ${cell}`);
  }
  if (wanted.size === 0) return [];
  return [...traced.clearances]
    .sort((p, q) => p.mm - q.mm)
    .flatMap(({ a, b, atA, atB, mm }) => {
      const [i, j] = [graph.islandAt(a, atA), graph.islandAt(b, atB)];
      const [p, q] = [netOfIsland[i], netOfIsland[j]];
      if (!wanted.has(`${p} ${q}`) && !wanted.has(`${q} ${p}`)) return [];
      return [{ at: between(atA, atB), mm, a: i, b: j, paper: 0.85, meant: 0.8, by: 'starved' as const }];
    });
}

/** What crosses a strip more widely than this, mm, with copper leading round it, is how the copper was laid. */
const ledRoundMm = 2;

/**
 * Lines across a strip that may be breaks or glare: the mask runs on. And breaks round which copper still leads another
 * way, as where a bridge joins the two sides: harmless until that is cut.
 */
function unsureBreaks(found: Case): Found[] {
  return found.traced.crossings
    .filter(
      ({ other, gap, piece, widthMm }) =>
        piece > 0 &&
        gap >= 0.3 &&
        (other === undefined ? gap < openFrom : other === piece && widthMm < ledRoundMm),
    )
    .map(({ at, widthMm, piece, gap, fine, other }) => {
      const island = found.wiring.graph.islandAt(piece, at);
      return {
        at,
        mm: widthMm,
        a: island,
        b: island,
        paper: gap,
        meant: meantAt(found, at),
        by: fine
          ? ('fine' as const)
          : seenPlainly(found, { at, gap, other })
            ? ('cut' as const)
            : ('unsure' as const),
      };
    });
}

/** Paper from side to side of a planned strip, of this chance: a cut, though copper leads round it. */
const plainly = 0.85;

function seenPlainly({ card }: Case, { at, gap, other }: Pick<Crossing, 'at' | 'gap' | 'other'>): boolean {
  return other !== undefined && gap >= plainly && isPlanned(card, at);
}

/** With a plan a strip is meant only where one is planned. */
function meantAt({ card }: Case, at: Point): number {
  return !card.plan?.strips.length || isPlanned(card, at) ? 1 : 0.5;
}

/** Whether a strip is planned at a place. */
export function isPlanned({ plan }: Case['card'], at: Point): boolean {
  return (plan?.strips ?? []).some(({ path, width_mm }) =>
    path.some((p, k) => k > 0 && toSegment(at, path[k - 1], p) <= width_mm / 2),
  );
}
