import type { Card } from '../card/index.ts';
import {
  applyTouchUp,
  closeGlints,
  dropPrint,
  openBesideLamps,
  openOnPatches,
  openPaper,
  openChannels,
  openCuts,
  seeCopper,
  settleTaps,
} from '../copper/index.ts';
import { loadOpenCv } from '../engine/openCv.ts';
import { verdictOf } from '../net/index.ts';
import { scaleTold } from '../parts/scale/index.ts';
import { suggestParts } from '../parts/suggest/index.ts';
import type { Photo } from '../photo/index.ts';
import { solveStates } from '../power/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { trace } from '../trace/index.ts';
import { cutLamps } from './cutLamps.ts';
import { hiddenOn, lampsOn } from './hiddenOn.ts';
import { learnedOr } from './learnedOr.ts';
import { nets } from './nets.ts';
import type { CheckOptions } from './options.ts';
import { cardWithSheets, joinSheets, placeSheet, tracedWithSheets } from './sheets/index.ts';
import type { PlacedSheet, ReadSheet, SheetPhoto } from './sheets/index.ts';
import { placeShots } from './shots.ts';
import { stopwatch } from './stopwatch.ts';
import type { Checked, StageName, Untaught } from './types.ts';
import { weighCrossings } from './weighCrossings.ts';
import { weighOutline } from './weighOutline.ts';

const order: StageName[] = ['decode', 'square', 'copper', 'trace', 'net', 'power'];

export interface Work {
  photo: Photo;
  card: Card;
  /** Further shots of the same sheet, fused with the first. */
  again?: readonly Photo[];
  /** Photographs of the card's other sheets: flaps, the base before a patch. */
  sheets?: readonly SheetPhoto[];
  /** The check so far; its stages before `from` are taken over. */
  before?: Checked;
}

/**
 * Renews a check from a stage on: 'square' for a new photograph, size or corner, 'copper' for a tap that teaches,
 * 'trace' for a brush stroke undone, 'net' for a part, 'power' for the cell's age.
 */
export async function renewFrom(from: StageName, work: Work, options: CheckOptions = {}): Promise<Checked> {
  const { photo, card } = work;
  const watch = stopwatch(options.onStage);
  const first = firstStage(from, work.before, card);
  const kept = (stage: StageName) => (order.indexOf(stage) < order.indexOf(first) ? work.before : undefined);
  const square = kept('square') ?? (await watch.run('square', () => placeAll(work, options)));
  const { outline, shots, placed } = square;
  const { sheet, seen, untaught, joined, suggested } =
    kept('copper') ?? (await watch.run('copper', () => seeAll(square, card, options, work.before?.untaught)));
  const mask = kept('trace')?.mask ?? applyTouchUp(cutLamps(seen, card), card.touch_up);
  const traced =
    kept('trace')?.traced ??
    (await watch.run('trace', () => {
      const own = weighCrossings(trace(mask, sheet), seen);
      return joined ? tracedWithSheets(own, joined, card) : own;
    }));
  const scale = scaleTold(card, suggested, traced);
  const { netlist, compared } = kept('net') ?? (await watch.run('net', () => nets(traced, card, joined)));
  const power = await watch.run('power', () =>
    solveStates(netlist, traced, cardWithSheets(card, joined?.beneath), { depth: options.depth ?? 'full' }),
  );
  return {
    photo: { name: photo.name, width: photo.width, height: photo.height },
    card,
    outline: weighOutline(outline, scale),
    sheet,
    own: square.own,
    shots,
    placed,
    joined,
    seen,
    untaught,
    suggested,
    mask,
    traced,
    ...(scale ? { scale } : {}),
    netlist,
    compared,
    power,
    verdict: verdictOf(netlist.findings),
    timingsMs: watch.timingsMs,
  };
}

/**
 * The stage that a renewal must truly begin from. The copper is seen by where lamps, cell and patches lie, so that one of
 * them moved has it seen anew: a check hangs on the card alone, whatever the order of the edits.
 */
export function firstStage<From extends StageName>(
  from: From,
  before: Pick<Checked, 'card'> | undefined,
  card: Card,
): From | 'copper' {
  const later = order.indexOf(from) > order.indexOf('copper');
  return later && before && partsOf(before.card) !== partsOf(card) ? 'copper' : from;
}

/** The photograph with further shots of it, and the card's other sheets, each in its own frame. */
async function placeAll(
  { photo, card, again = [], sheets = [] }: Work,
  options: CheckOptions,
): Promise<Pick<Checked, 'outline' | 'sheet' | 'shots' | 'own' | 'placed'>> {
  const first = await placeShots(photo, again, card, options);
  if (sheets.length === 0) return first;
  const placed: PlacedSheet[] = [];
  for (const each of sheets) placed.push(await placeSheet(each, card, first.sheet.pxPerMm, options));
  return { ...first, own: first.sheet, placed };
}

/** The copper of every sheet, all laid together in the base's frame. */
async function seeAll(
  { sheet, own = sheet, placed = [] }: Pick<Checked, 'sheet' | 'own' | 'placed'>,
  card: Card,
  options: CheckOptions,
  before: Checked['untaught'] = new Map(),
): Promise<Pick<Checked, 'sheet' | 'seen' | 'untaught' | 'joined' | 'suggested'>> {
  const untaught = new Map<SquaredSheet, Untaught>();
  const see = async (each: SquaredSheet, of: Card) => {
    const bare = await seenUntaught(each, of, options, before.get(each));
    untaught.set(each, bare);
    return { ...bare, seen: await settleTaps(loadOpenCv, each, bare.mask, bare.learned, of.teach) };
  };
  const { seen, suggested } = await see(own, card);
  if (placed.length === 0) return { sheet: own, seen, untaught, suggested };
  const reads: ReadSheet[] = [];
  for (const each of placed) {
    const parts = each.given.sheet === 'base' ? {} : { lamps: [], cell: undefined };
    reads.push({ ...each, seen: (await see(each.sheet, { ...card, ...parts, teach: noTaps })).seen });
  }
  return { ...joinSheets({ sheet: own, seen }, reads, card), untaught, suggested };
}

/** Taps teach the photograph that they were made on. */
const noTaps: Card['teach'] = { copper: [], paper: [] };

/** What of a card the copper is seen by, beside the taps: where lamps, cell and patches lie. */
function partsOf({ lamps, cell, patches }: Card): string {
  const pads = lamps.map(({ plus, minus, on }) => [plus, minus, on]);
  return JSON.stringify([pads, cell?.kind, cell?.at, patches.map(({ outline }) => outline)]);
}

/** The copper before what the maker's taps say of it; what was seen before stands as far as it still holds. */
async function seenUntaught(
  sheet: SquaredSheet,
  card: Card,
  options: CheckOptions,
  before?: Untaught,
): Promise<Untaught> {
  const of = partsOf(card);
  if (before?.learned && before.of === of) return before;
  const { map: learned, lost } = before?.learned
    ? { map: before.learned, lost: false }
    : await learnedOr(options.learned, sheet);
  const { copper: teachCopper, paper: teachPaper } = card.teach;
  const all = seeCopper(sheet, learned ? { learned } : { teachCopper, teachPaper });
  const seen = dropPrint(all, sheet, learned ? [] : teachCopper);
  if (lost) seen.troubles.unshift('no-nets');
  const shone = closeGlints(openPaper(seen, sheet, lampsOn(card)), sheet, hiddenOn(card));
  const onPaper = openOnPatches(
    shone,
    sheet,
    card.patches.map(({ outline }) => outline),
  );
  const apart = openChannels(openBesideLamps(onPaper, sheet, card.lamps), sheet, lampsOn(card));
  return {
    mask: openCuts(apart, sheet, hiddenOn(card)),
    learned,
    suggested: before?.learned ? before.suggested : suggestParts(sheet, learned),
    of,
  };
}
