import type { Point } from '../geometry/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { isShaded, medianRgb, rgbAt, sharesOf, type Rgb } from './paperColour.ts';
import type { CopperMask } from './types.ts';
import { withinReach } from './withinReach.ts';

/** A lamp by the places of its pads, mm on the base. */
export interface LampPlace {
  plus: Point;
  minus: Point;
}

/** The channel between a lamp's strips, seen from its middle: so far to both sides it may be taken for copper, mm. */
const besideMm = 5;
/** There, from the first to the second, the channel and its own paper are looked for, mm. */
const paperMm = [1.5, 10] as const;
/** Steps across the channel, mm, and the share of the outermost that is open at least. */
const stepMm = 0.2;
const leastOpen = 0.35;
/** Enough paper for a median, mm^2. */
const leastPaper = 0.5;
/**
 * Beside strips that shine this many times brighter than the paper (or darker), shade that only they light takes on their
 * warm tint, down to this share of the paper's light: foil would be on their side of the paper.
 */
const shining = 1.5;
const warm = { least: 0.4, mostUneven: 1.7 };
/** Where this share of the strips themselves would pass for paper in shade (kraft, rust), colour tells nothing. */
const mostAlike = 0.15;
/** Blur hides the border between shade and foil over so much, mm. */
const blurMm = 0.2;

/** Along the pads and along the channel, mm from the lamp's middle. */
type Place = { k: number; along: number; beside: number };

/**
 * Opens what passes for copper in the channel beside a lamp and is paper by its colour: a lamp lies over the slit
 * between two strips, and its foot and shade make the nets see a bridge there. Foil laid across has the tint of copper
 * however dark it is, so a bridge beside a lamp stays.
 */
export function openBesideLamps(
  mask: CopperMask,
  sheet: SquaredSheet,
  lamps: readonly LampPlace[],
): CopperMask {
  if (mask.by !== 'learned' || lamps.length === 0) return mask;
  const [filled, strict] = [mask.filled.slice(), mask.strict.slice()];
  for (const lamp of lamps) {
    for (const k of shadedPaper(lamp, mask, sheet)) filled[k] = strict[k] = 0;
  }
  return { ...mask, filled, strict };
}

function shadedPaper(lamp: LampPlace, mask: CopperMask, sheet: SquaredSheet): Set<number> {
  const spacing = Math.hypot(lamp.plus[0] - lamp.minus[0], lamp.plus[1] - lamp.minus[1]);
  const round = placesRound(lamp, mask, spacing);
  const open = new Set<number>();
  for (const side of [-1, 1]) {
    const own = round.filter(({ beside }) => side * beside > 0);
    const inChannel = channelOf(own, mask, spacing);
    const paper = channelPaper(own.filter(inChannel), mask, sheet);
    if (!paper) continue;
    const strips = own.filter(({ k, along }) => mask.filled[k] && Math.abs(along) > spacing / 2);
    const shaded = ({ k }: Place) => isShaded(rgbAt(sheet, k), paper);
    if (strips.length === 0 || strips.filter(shaded).length > mostAlike * strips.length) continue;
    const copperLight = lightOf(medianRgb(sheet, placesOf(strips))) / lightOf(paper);
    const alike = (place: Place) => shaded(place) || isWarmShade(rgbAt(sheet, place.k), paper, copperLight);
    const near = own.filter((place) => inChannel(place) && side * place.beside <= besideMm);
    const copper = near.filter(({ k }) => mask.filled[k]);
    const found = withinReach(placesOf(copper.filter(alike)), Math.round(blurMm * mask.pxPerMm), mask);
    for (const { k } of copper) if (found.has(k)) open.add(k);
  }
  return open;
}

function placesRound({ plus, minus }: LampPlace, mask: CopperMask, spacing: number): Place[] {
  const { width, height, pxPerMm, originMm } = mask;
  const [ux, uy] = [(plus[0] - minus[0]) / (spacing || 1), (plus[1] - minus[1]) / (spacing || 1)];
  const [mx, my] = [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2];
  const [ci, cj] = [(mx - originMm[0]) * pxPerMm, (my - originMm[1]) * pxPerMm];
  const reach = Math.ceil(paperMm[1] * pxPerMm);
  const places: Place[] = [];
  for (let j = Math.max(0, Math.floor(cj) - reach); j <= Math.min(height - 1, cj + reach); j++) {
    for (let i = Math.max(0, Math.floor(ci) - reach); i <= Math.min(width - 1, ci + reach); i++) {
      const [dx, dy] = [(i + 0.5 - ci) / pxPerMm, (j + 0.5 - cj) / pxPerMm];
      const along = dx * ux + dy * uy;
      if (Math.abs(along) <= spacing) places.push({ k: j * width + i, along, beside: dy * ux - dx * uy });
    }
  }
  return places;
}

/** Whether a place lies between the two strips that a lamp joins: where mostly no copper is, farther along the channel. */
function channelOf(own: readonly Place[], mask: CopperMask, spacing: number): (place: Place) => boolean {
  const steps = Math.max(1, Math.ceil(spacing / stepMm));
  const [open, all] = [new Uint32Array(steps), new Uint32Array(steps)];
  const stepOf = ({ along }: Place) => Math.floor((along / spacing + 0.5) * steps);
  for (const place of own) {
    const far = Math.abs(place.beside);
    const n = stepOf(place);
    if (n < 0 || n >= steps || far < paperMm[0] || far > paperMm[1]) continue;
    all[n]++;
    if (!mask.filled[place.k]) open[n]++;
  }
  const isOpen = Array.from(open, (count, n) => all[n] > 0 && count > leastOpen * all[n]);
  const [first, last] = [isOpen.indexOf(true), isOpen.lastIndexOf(true)];
  return (place) => first >= 0 && stepOf(place) >= first && stepOf(place) <= last;
}

/** The middle colour of the paper in the channel on one side of a lamp, in linear light. */
function channelPaper(channel: readonly Place[], mask: CopperMask, sheet: SquaredSheet): Rgb | undefined {
  const [from, to] = paperMm;
  const paper = channel.filter(({ k, beside }) => {
    const far = Math.abs(beside);
    return !mask.filled[k] && far >= from && far <= to;
  });
  if (paper.length < leastPaper * mask.pxPerMm ** 2) return undefined;
  return medianRgb(sheet, placesOf(paper));
}

/** @param copperLight the strips' light over the paper's */
function isWarmShade(rgb: Rgb, paper: Rgb, copperLight: number): boolean {
  const [least, most] = sharesOf(rgb, paper);
  if (least < warm.least || most > warm.mostUneven * least) return false;
  const light = lightOf(rgb) / lightOf(paper);
  return copperLight >= shining ? light <= 1 : copperLight <= 1 / shining && light >= 1;
}

const lightOf = ([r, g, b]: Rgb): number => Math.max(1e-3, (r + g + b) / 3);

const placesOf = (places: readonly Place[]): number[] => places.map(({ k }) => k);
