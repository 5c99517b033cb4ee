import type { Point } from '../../geometry/index.ts';
import type { Clearance, Neck } from '../../trace/index.ts';
import { flapOver } from '../../parts/index.ts';
import { netAt, type Case } from '../case.ts';
import { cellOver, covered, inLampShadow, lampOver, onSheet, sheetAt } from '../covered.ts';
import { isPlanned } from '../breaks.ts';
import { atContact } from './atContact.ts';
import { between, distance } from '../distance.ts';
import { openCrossings, sidesOf } from '../openings.ts';
import type { Finding } from '../types.ts';
import { threads } from './threads.ts';

/** Remarks of one kind nearer than this are one, mm. */
const sameMm = 3;

/** Clearances under the card's limit between two nets. */
export function tightPlaces(found: Case): Finding[] {
  const { traced, card } = found;
  return [...traced.clearances, ...slits(found)]
    .filter(({ mm }) => mm < card.limits.clearance_mm)
    .flatMap(({ mm, a, b, atA, atB }) => {
      const place = between(atA, atB);
      const nets = [netAt(found, a, atA), netAt(found, b, atB)];
      if (nets[0] === nets[1] || covered(card, place) || atContact(card, place)) return [];
      return [
        {
          ...remark(found, 'tight', place, 'check'),
          sizeMm: mm,
          certainty: sureOf(found, [a, b], mm < 0.15 ? 0.6 : 0.9),
          nets,
          facts: { limit: card.limits.clearance_mm },
        },
      ];
    })
    .filter(apart(found));
}

/** A piece of which the net is less sure in the mean is as likely a shadow or a blot: a place to look at. */
const surePiece = 0.8;
const doubtful = 0.3;

function sureOf({ traced }: Case, pieces: readonly number[], certainty: number): number {
  return pieces.every((id) => traced.pieces[id - 1].sure >= surePiece) ? certainty : doubtful;
}

/** Paper between copper that the mask runs over, where no strip is planned to go on: two strips that nearly touch. */
function slits({ traced, card }: Case): Clearance[] {
  if (!card.plan?.strips.length) return [];
  return openCrossings(traced, card).flatMap((crossing) => {
    const sides = sidesOf(crossing);
    if (!sides || isPlanned(card, crossing.at)) return [];
    const { piece } = crossing;
    return [{ a: piece, b: piece, atA: sides[0], atB: sides[1], mm: crossing.widthMm }];
  });
}

/** Places much narrower than their strip, where current has to pass. */
export function narrowNecks(found: Case): Finding[] {
  const { traced, card } = found;
  const narrow = ({ at, widthMm, usualMm }: Neck) =>
    widthMm < card.limits.neck_ratio * usualMm &&
    widthMm > 0 &&
    !covered(card, at) &&
    !inLampShadow(card, at);
  const necks = traced.necks.filter((neck) => narrow(neck) && carries(found, neck.piece, neck.at));
  return [...necks, ...threads(traced).filter(narrow)]
    .sort((a, b) => a.widthMm - b.widthMm)
    .map(({ at, widthMm, usualMm, piece, sure, paper }) => ({
      ...remark(found, 'narrow-neck', at, 'check'),
      sizeMm: widthMm,
      certainty: neckCertainty(found, { at, widthMm, usualMm, piece, sure, paper }),
      nets: [netAt(found, piece, at)],
      facts: { usual: usualMm },
    }))
    .filter(apart(found));
}

/** What the photograph must show of a neck: copper in what is left (of 1), paper in this share of what lacks. */
const sureNeck = 0.6;
const nickPaper = 0.5;

function neckCertainty(found: Case, { piece, widthMm, sure = 1, paper = 1 }: Neck): number {
  if (sure < sureNeck || paper < nickPaper) return doubtful;
  return sureOf(found, [piece], widthMm < 0.2 ? 0.6 : 0.85);
}

/** Whether the copper on both sides of a place leads on for some way: a spur's root is no neck. */
function carries({ wiring: { graph } }: Case, piece: number, at: Point): boolean {
  const own = graph.stretches.filter((stretch) => stretch.piece === piece);
  const on = own.find(({ path }) => path.some((p) => distance(p, at) < 0.3));
  if (!on) return false;
  const leads = (node: number) =>
    own.some((other) => other !== on && (other.from === node || other.to === node)) ||
    distance(at, node === on.from ? on.path[0] : on.path[on.path.length - 1]) > 4;
  return leads(on.from) && leads(on.to);
}

/**
 * Lines right across a strip look like seams and are mostly creases: on the fixtures all of those under this chance were.
 * Ordinary overlaps stay listed under what is not seen.
 */
const toldSeam = 0.65;
/** Of the seams told on path-traced photographs at 0.7 six in ten were. */
const seamCertainty = 0.86;

/** Overlaps whose conduction a photograph cannot prove. */
export function seams(found: Case): Finding[] {
  const { traced, card } = found;
  const settled = (at: Point) => card.joins.some((join) => join.conducts && distance(join.at, at) < 4);
  return [...traced.crossings]
    .sort((a, b) => b.seam - a.seam)
    .filter(({ seam, gap, piece }) => gap < 0.3 && seam >= toldSeam && piece > 0)
    .filter(({ at }) => !covered(card, at) && !settled(at))
    .map(({ at, seam, piece }) => ({
      ...remark(found, 'seam', at, 'check'),
      certainty: seamCertainty * seam,
      nets: [netAt(found, piece, at)],
      facts: {},
    }))
    .filter(apart(found));
}

/** Ends that lead to no lamp, cell, contact, patch or neighbour. */
export function looseEnds(found: Case): Finding[] {
  const { traced, attached } = found;
  const used = (at: Point) =>
    attached.pads.some((pad) => pad.piece > 0 && distance(pad.at, at) < 6) ||
    atContact(found.card, at) ||
    nearPart(found, at) ||
    traced.crossings.some((cut) => cut.other !== undefined && distance(cut.at, at) < 5);
  return traced.pieces
    .flatMap(({ ends, widthMm }) => ends.filter((end) => end.widthMm > 0.6 * widthMm))
    .filter(({ at }) => !used(at) && !found.card.flaps.some((flap) => flapOver(flap, at)))
    .map(({ at, piece }) => ({
      ...remark(found, 'loose-end', at, 'note'),
      certainty: 0.8,
      nets: [netAt(found, piece, at)],
      facts: {},
    }))
    .filter(apart(found));
}

/** Copper nearer to the base's edge than the trim allows; what runs over the edge goes onto a flap. */
export function nearEdges(found: Case): Finding[] {
  const { traced, card } = found;
  const { width, height } = traced.baseMm;
  const limit = card.limits.edge_mm;
  return traced.pieces
    .flatMap(({ id, outline: { outer } }) => {
      const inset = ([x, y]: Point) => Math.min(x, y, width - x, height - y);
      const nearest = outer.reduce((a, b) => (inset(b) < inset(a) ? b : a));
      const mm = inset(nearest);
      return mm < -0.3 || mm >= limit ? [] : [{ id, at: nearest, mm }];
    })
    .filter(({ at }) => !card.flaps.some(({ fold }) => fold.some((p) => distance(p, at) < 40)))
    .map(({ id, at, mm }) => ({
      ...remark(found, 'near-edge', at, 'note'),
      sizeMm: Math.max(0, mm),
      certainty: 0.8,
      nets: [netAt(found, id, at)],
      facts: { limit },
    }));
}

function remark<K extends Finding['kind'], W extends Finding['weight']>(
  { card }: Case,
  kind: K,
  at: Point,
  weight: W,
) {
  return { kind, at, weight, lamps: [] as string[], sheet: sheetAt(card, at) };
}

/** Keeps the first of remarks at one place, and none beside the sheet. */
function apart({ traced, card }: Case): (finding: Finding) => boolean {
  const kept: Point[] = [];
  return ({ at }) => {
    if (!onSheet(traced, card, at) || kept.some((p) => distance(p, at) < sameMm)) return false;
    kept.push(at);
    return true;
  };
}

function nearPart({ card, traced }: Case, at: Point): boolean {
  const upper = card.cell?.upper_contact;
  if (lampOver(card, at) || cellOver(card, at, 3) || (upper && distance(upper, at) < 8)) return true;
  return covered(card, at) || besidePatch(card, at) || !onSheet(traced, card, at);
}

function besidePatch({ patches }: Case['card'], at: Point): boolean {
  return patches.some(({ outline }) =>
    outline.some((p, k) => {
      const q = outline[(k + 1) % outline.length];
      return (
        distance(between(p, q), at) < distance(p, q) / 2 + 2 &&
        distance(p, at) + distance(q, at) < distance(p, q) + 4
      );
    }),
  );
}
