import { components } from '../../../src/copper/index.ts';
import type { Point } from '../../../src/geometry/index.ts';
import type { Binary } from '../maskScore.ts';

/** What a maker sees to be wrong with the pieces of a mask, and where to say so. */
export interface Mistake {
  kind: 'merge' | 'split' | 'missing' | 'false';
  /** Pixels of the compared masks. */
  at: Point;
  /** Area that is counted to a wrong piece, px^2. */
  area: number;
}

/** The answer to a mistake: 'paper' where the mask has too much, 'copper' where it has too little. */
export const answerTo = ({ kind }: Mistake): 'copper' | 'paper' =>
  kind === 'merge' || kind === 'false' ? 'paper' : 'copper';

/** Pieces overlap from this share of the smaller one on. */
const overlaps = 0.15;

/**
 * Where found pieces are not the true ones, the largest first: a place in each join of two true pieces, a place in true
 * copper between two found parts of one piece, the middle of a piece that is missing or false.
 * @param least area of a piece, px^2; what is smaller is none
 */
export function mistakesIn(found: Binary, truth: Binary, least: number): Mistake[] {
  const [mine, theirs] = [piecesOf(found, least), piecesOf(truth, least)];
  const pairs = overlapsOf(mine, theirs, least);
  const partners = (label: number, of: 'mine' | 'theirs'): number[] =>
    pairs.filter((pair) => pair[of] === label).map((pair) => pair[of === 'mine' ? 'theirs' : 'mine']);
  const mistakes: Mistake[] = [];
  for (let label = 1; label < mine.areas.length; label++) {
    if (!mine.areas[label]) continue;
    const within = partners(label, 'mine');
    if (within.length === 0)
      mistakes.push({ kind: 'false', at: innermost(mine, label), area: mine.areas[label] });
    if (within.length > 1) mistakes.push(...contactsIn(mine, label, theirs, within, 'merge'));
  }
  for (let label = 1; label < theirs.areas.length; label++) {
    if (!theirs.areas[label]) continue;
    const parts = partners(label, 'theirs');
    if (parts.length === 0)
      mistakes.push({ kind: 'missing', at: innermost(theirs, label), area: theirs.areas[label] });
    if (parts.length > 1) mistakes.push(...contactsIn(theirs, label, mine, parts, 'split'));
  }
  return mistakes.sort((a, b) => b.area - a.area);
}

interface Pieces {
  width: number;
  height: number;
  labels: Int32Array;
  /** Area of each label; 0 for what is too small to be a piece. */
  areas: Int32Array;
}

function piecesOf({ data, width, height }: Binary, least: number): Pieces {
  const { labels, count } = components(data, width, height, 8);
  const areas = new Int32Array(count + 1);
  for (const label of labels) if (label) areas[label]++;
  for (let label = 1; label <= count; label++) if (areas[label] < least) areas[label] = 0;
  return { width, height, labels, areas };
}

function overlapsOf(mine: Pieces, theirs: Pieces, least: number): { mine: number; theirs: number }[] {
  const shared = new Map<number, number>();
  const count = theirs.areas.length;
  for (let k = 0; k < mine.labels.length; k++) {
    const [a, b] = [mine.labels[k], theirs.labels[k]];
    if (mine.areas[a] && theirs.areas[b]) shared.set(a * count + b, (shared.get(a * count + b) ?? 0) + 1);
  }
  return [...shared].flatMap(([key, area]) => {
    const [a, b] = [Math.floor(key / count), key % count];
    const enough = Math.max(least / 2, overlaps * Math.min(mine.areas[a], theirs.areas[b]));
    return area >= enough ? [{ mine: a, theirs: b }] : [];
  });
}

/** The pixel of a piece that is farthest from its border, by layers taken off it. */
function innermost({ width, height, labels }: Pieces, label: number): Point {
  const left = Uint8Array.from(labels, (l) => (l === label ? 1 : 0));
  let layer = pixelsOf(left);
  let last = layer[0];
  while (layer.length > 0) {
    last = layer[layer.length >> 1];
    const rim = layer.filter((k) => neighbours(k, width, height, 4).some((n) => n < 0 || !left[n]));
    if (rim.length === 0) break;
    for (const k of rim) left[k] = 0;
    layer = layer.filter((k) => left[k]);
  }
  return placeOf(last, width);
}

/**
 * Places within a piece where the parts of it that belong to different pieces of the other mask meet: each grows into what
 * belongs to none, and where two fronts touch is a contact.
 */
function contactsIn(
  whole: Pieces,
  label: number,
  other: Pieces,
  parts: readonly number[],
  kind: 'merge' | 'split',
): Mistake[] {
  const { width, height, labels } = whole;
  const owner = new Int32Array(labels.length);
  let front: number[] = [];
  for (let k = 0; k < labels.length; k++) {
    if (labels[k] !== label || !parts.includes(other.labels[k])) continue;
    owner[k] = other.labels[k];
    front.push(k);
  }
  const meets = new Map<string, Set<number>>();
  while (front.length > 0) {
    const next: number[] = [];
    for (const k of front) {
      for (const n of neighbours(k, width, height, 8)) {
        if (n < 0 || labels[n] !== label) continue;
        if (!owner[n]) {
          owner[n] = owner[k];
          next.push(n);
        } else if (owner[n] !== owner[k]) {
          const key = [owner[n], owner[k]].sort((a, b) => a - b).join(' ');
          meets.set(key, (meets.get(key) ?? new Set()).add(k).add(n));
        }
      }
    }
    front = next;
  }
  return [...meets].flatMap(([key, pixels]) => {
    const area = Math.min(...key.split(' ').map((each) => other.areas[Number(each)]));
    return groupsOf(pixels, width, height).map((group) => ({ kind, at: middleOf(group, width), area }));
  });
}

/** Contacts that hang together. */
function groupsOf(pixels: ReadonlySet<number>, width: number, height: number): number[][] {
  const left = new Set(pixels);
  const groups: number[][] = [];
  for (const start of pixels) {
    if (!left.delete(start)) continue;
    const group = [start];
    for (let n = 0; n < group.length; n++) {
      for (const near of neighbours(group[n], width, height, 8)) if (left.delete(near)) group.push(near);
    }
    groups.push(group);
  }
  return groups;
}

/** Of some pixels the one nearest to their mean. */
function middleOf(pixels: readonly number[], width: number): Point {
  const places = pixels.map((k) => placeOf(k, width));
  const mean = [0, 1].map((c) => places.reduce((sum, p) => sum + p[c], 0) / places.length);
  const far = (p: Point): number => Math.hypot(p[0] - mean[0], p[1] - mean[1]);
  return places.reduce((best, p) => (far(p) < far(best) ? p : best));
}

const placeOf = (k: number, width: number): Point => [(k % width) + 0.5, Math.floor(k / width) + 0.5];

function pixelsOf(mask: Uint8Array): number[] {
  const found: number[] = [];
  for (let k = 0; k < mask.length; k++) if (mask[k]) found.push(k);
  return found;
}

/** Neighbouring pixels; -1 for those beyond the picture. */
function neighbours(k: number, width: number, height: number, count: 4 | 8): number[] {
  const [i, j] = [k % width, Math.floor(k / width)];
  const found: number[] = [];
  for (let v = -1; v <= 1; v++)
    for (let u = -1; u <= 1; u++) {
      if ((u === 0 && v === 0) || (count === 4 && u !== 0 && v !== 0)) continue;
      const inside = i + u >= 0 && j + v >= 0 && i + u < width && j + v < height;
      found.push(inside ? k + v * width + u : -1);
    }
  return found;
}
