import { middleOf } from '../../geometry/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';
import type { CopperMask } from '../types.ts';
import { apartMm, axisPlaces, type AxisPlace } from './axis.ts';
import { bandAt, steepest, widestFlank, type Band } from './band.ts';
import { extentOf, type Extent } from './extent.ts';
import { mouthsOf } from './mouths.ts';
import { rowOf, windowAt, type Window } from './window.ts';

/** A band of paper across a strip, with how it stands out there. */
export interface Cut extends Band, Extent {
  place: AxisPlace;
  /** How much lower the odds of copper are on it than along the strip, log. */
  doubt: number;
  /** The best score of any other band near by along the strip: how much its creases and glints look like cuts. */
  rest: number;
  /** Share of its columns that the mask has open. */
  open: number;
  /** Chance that it is one, 0..1. */
  sure: number;
}

/** Rows to both sides of a place that are its own, and one more so that none falls between two places. */
const own = Math.ceil((apartMm * 10) / 2) + 1;
/** A first score from which on a band is looked at closely. */
const leastScore = 2.5;
/** Log-odds by which a strip is less surely copper on a cut; where nothing is doubted nothing is looked for. */
const leastDoubt = 0.9;
const doubtColumns = 8;
const doubtShare = 0.6;
/** mm along a strip over which other bands tell how it looks by itself, and within which one is the same. */
const roundMm = [1.5, 10] as const;

/** What a cut must show at least or at most; see `standsOut`. */
const least = { score: 3.5, doubt: 1, paper: 0.5, parted: 0.5, shade: 0.8, worth: 5.2 };
const most = { held: 0.22, light: 1.035, shine: 0.2 };
/** A band that is darker than this share of the paper's light may be a crease or a pencil's line: both its ends must open. */
const dark = 0.88;
/** What doubt, up to so much, adds to a score, and what the strip's own look takes from it. */
const ofDoubt = 0.8;
const mostDoubt = 3;
const ofRest = 0.5;

/** Log-odds of each chance of copper. */
const odds = Float32Array.from({ length: 256 }, (_, v) => Math.log((v + 1) / (256 - v)));

/**
 * Cuts across the strips of a mask: straight bands from side to side that look like the paper beside the strip, open onto
 * it, and stand out from what creases and glints do along the same strip. The figures are set on path-traced photographs.
 * @param hidden places that something lies on
 */
export function cutsAcross(
  mask: CopperMask,
  sheet: SquaredSheet,
  hidden: (x: number, y: number) => boolean,
): Cut[] {
  const unit = mask.pxPerMm / 10;
  const places = axisPlaces(mask);
  const first = firstLooks(mask, sheet, unit);
  const cuts: Cut[] = [];
  for (const place of places) {
    const [x, y] = [place.x / mask.pxPerMm + mask.originMm[0], place.y / mask.pxPerMm + mask.originMm[1]];
    if (hidden(x, y) || !isDoubtful(place, mask, unit)) continue;
    const cut = closeLook(place, first(place));
    if (cut && standsOut(cut)) cuts.push(cut);
  }
  return bestOfEach(cuts, mask)
    .map((cut) => ({ ...cut, rest: restRound(cut.place, places, first, mask) }))
    .filter(standsOut)
    .map((cut) => ({ ...cut, sure: sureOf(cut) }));
}

/** Neighbouring places see one and the same cut. */
function bestOfEach(cuts: Cut[], { pxPerMm }: CopperMask): Cut[] {
  const kept: Cut[] = [];
  for (const cut of cuts.sort((p, q) => q.score - p.score)) {
    const { x, y } = cut.place;
    const again = kept.some(({ place }) => Math.hypot(place.x - x, place.y - y) < roundMm[0] * pxPerMm);
    if (!again) kept.push(cut);
  }
  return kept;
}

/** Whether a band is a cut for certain. */
function standsOut({ score, doubt, rest, paper, parted, held, shade, light, shine, ends }: Cut): boolean {
  if (score < least.score || doubt < least.doubt || paper < least.paper || parted < least.parted)
    return false;
  if (held > most.held || shade < least.shade || light > most.light || shine > most.shine) return false;
  if (ends < (shade < dark ? 2 : 1)) return false;
  return worthOf({ score, doubt, rest }) >= least.worth;
}

type Signs = Pick<Cut, 'score' | 'doubt' | 'rest'>;

const worthOf = ({ score, doubt, rest }: Signs): number =>
  score + ofDoubt * Math.min(mostDoubt, doubt) - ofRest * rest;

/** Of 101 that stood out on path-traced photographs 94 were cuts: the line of their odds by what they are worth. */
const sureFrom = { worth: 5, slope: 1.3 };

const sureOf = (signs: Signs): number =>
  1 / (1 + Math.exp(-sureFrom.slope * (worthOf(signs) - sureFrom.worth)));

interface Look {
  window: Window;
  mouths: ReturnType<typeof mouthsOf>;
  best?: Band;
}

/** The first look at each place, kept: neighbours are asked for it too. */
function firstLooks(mask: CopperMask, sheet: SquaredSheet, unit: number): (place: AxisPlace) => Look {
  const known = new Map<AxisPlace, Look>();
  return (place) => {
    const before = known.get(place);
    if (before) return before;
    const reach = own + Math.ceil((steepest * place.half) / unit) + widestFlank + 2;
    const window = windowAt(place, reach, mask, sheet, unit);
    const mouths = mouthsOf(window);
    let best: Band | undefined;
    for (let row = -own; row <= own; row += 2) {
      const band = bandAt(window, mouths, row);
      if (band && (!best || band.score > best.score)) best = band;
    }
    const look = { window, mouths, best };
    known.set(place, look);
    return look;
  };
}

function closeLook(place: AxisPlace, { window, mouths, best }: Look): Cut | undefined {
  if (!best || best.score < leastScore) return undefined;
  let band: Band | undefined;
  for (let row = Math.max(-own, best.row - 2); row <= Math.min(own, best.row + 2); row++) {
    const fine = bandAt(window, mouths, row, best);
    if (fine && (!band || fine.score > band.score)) band = fine;
  }
  if (!band) return undefined;
  return {
    ...band,
    place,
    doubt: doubtOn(window, band),
    rest: 0,
    sure: 0,
    open: openOn(window, band),
    ...extentOf(window, mouths, band),
  };
}

function restRound(
  place: AxisPlace,
  places: readonly AxisPlace[],
  first: (place: AxisPlace) => Look,
  { pxPerMm }: CopperMask,
): number {
  let rest = 0;
  for (const other of places) {
    const mm = Math.hypot(other.x - place.x, other.y - place.y) / pxPerMm;
    if (mm >= roundMm[0] && mm <= roundMm[1]) rest = Math.max(rest, first(other).best?.score ?? 0);
  }
  return rest;
}

/** Whether most columns of a strip have a row at which it is less surely copper than it is on the whole. */
function isDoubtful({ x, y, along, across, half }: AxisPlace, mask: CopperMask, unit: number): boolean {
  const { width, height, likelihood, filled } = mask;
  const lows: number[] = [];
  const all: number[] = [];
  for (let n = 0; n < doubtColumns; n++) {
    const t = (half - 2 * unit) * ((2 * n) / (doubtColumns - 1) - 1);
    const far = own + 4 + Math.ceil(steepest * Math.abs(t / unit));
    let low = Infinity;
    for (let s = -far; s <= far; s += 2) {
      const i = Math.floor(x + s * unit * along[0] + t * across[0]);
      const j = Math.floor(y + s * unit * along[1] + t * across[1]);
      if (i < 0 || j < 0 || i >= width || j >= height) continue;
      const k = j * width + i;
      const seen = filled[k] ? odds[likelihood[k]] : -9;
      low = Math.min(low, seen);
      all.push(seen);
    }
    lows.push(low);
  }
  const usual = middleOf(Float32Array.from(all));
  return lows.filter((low) => low < usual - leastDoubt).length >= doubtShare * doubtColumns;
}

/** Rows to both sides in which an opening of the mask counts as the cut's own. */
const openRows = 2;

function openOn({ columns, from, to, copper, ...window }: Window, { row, slope }: Band): number {
  let open = 0;
  for (let t = from; t < to; t++) {
    const r = rowOf({ columns, ...window } as Window, row, slope, t);
    for (let s = -openRows; s <= openRows; s++) {
      if (copper[(r + s) * columns.length + t]) continue;
      open++;
      break;
    }
  }
  return open / (to - from);
}

/** How much lower the median odds of copper are on a band than in its whole window, log. */
function doubtOn(window: Window, { row, slope }: Band): number {
  const { columns, from, to, chance, rows } = window;
  const on: number[] = [];
  const all: number[] = [];
  for (let t = from; t < to; t++) {
    on.push(chance[rowOf(window, row, slope, t) * columns.length + t]);
    for (let s = 0; s < rows; s += 4) all.push(chance[s * columns.length + t]);
  }
  return odds[middleOf(Float32Array.from(all))] - odds[middleOf(Float32Array.from(on))];
}
