import type { Card } from '../card/index.ts';
import { applyTouchUp, closeGlints, seeCopper } from '../copper/index.ts';
import type { CopperMask } from '../copper/index.ts';
import { verdictOf } from '../net/index.ts';
import type { Photo } from '../photo/index.ts';
import { solveStates } from '../power/index.ts';
import type { SquaredSheet } from '../sheet/index.ts';
import { trace } from '../trace/index.ts';
import { cutLamps } from './cutLamps.ts';
import { hiddenOn } from './hiddenOn.ts';
import { learnedOr } from './learnedOr.ts';
import { nets } from './nets.ts';
import type { CheckOptions } from './options.ts';
import { placeShots } from './shots.ts';
import { stopwatch } from './stopwatch.ts';
import type { Checked, StageName } from './types.ts';
import { weighCrossings } from './weighCrossings.ts';

const order: StageName[] = ['decode', 'square', 'copper', 'trace', 'net', 'power'];

export interface Work {
  photo: Photo;
  card: Card;
  /** Further shots of the same sheet, fused with the first. */
  again?: readonly Photo[];
  /** The check so far; its stages before `from` are taken over. */
  before?: Checked;
}

/**
 * Renews a check from a stage on: 'square' for a new photograph, size or corner, 'copper' for a tap that teaches,
 * 'trace' for a brush stroke undone, 'net' for a part, 'power' for the cell's age.
 */
export async function renewFrom(from: StageName, work: Work, options: CheckOptions = {}): Promise<Checked> {
  const { photo, card, again = [] } = work;
  const watch = stopwatch(options.onStage);
  const first = lampsCutAnew(from, work) ? 'trace' : from;
  const kept = (stage: StageName) => (order.indexOf(stage) < order.indexOf(first) ? work.before : undefined);
  const { outline, sheet, shots } =
    kept('square') ?? (await watch.run('square', () => placeShots(photo, again, card, options)));
  const seen = kept('copper')?.seen ?? (await watch.run('copper', () => see(sheet, card, options)));
  const mask = kept('trace')?.mask ?? applyTouchUp(cutLamps(seen, card), card.touch_up);
  const traced =
    kept('trace')?.traced ?? (await watch.run('trace', () => weighCrossings(trace(mask, sheet), seen)));
  const { netlist, compared } = kept('net') ?? (await watch.run('net', () => nets(traced, card)));
  const power = await watch.run('power', () =>
    solveStates(netlist, traced, card, { depth: options.depth ?? 'full' }),
  );
  return {
    photo: { name: photo.name, width: photo.width, height: photo.height },
    card,
    outline,
    sheet,
    shots,
    seen,
    mask,
    traced,
    netlist,
    compared,
    power,
    verdict: verdictOf(netlist.findings),
    timingsMs: watch.timingsMs,
  };
}

/** Without the net lamps are cut out of the mask where the card has them: one that moves changes the mask. */
function lampsCutAnew(from: StageName, { before, card }: Work): boolean {
  if (from !== 'net' || !before || before.seen.by !== 'classical') return false;
  const places = ({ lamps }: Card) => JSON.stringify(lamps.map(({ plus, minus }) => [plus, minus]));
  return places(before.card) !== places(card);
}

async function see(sheet: SquaredSheet, card: Card, options: CheckOptions): Promise<CopperMask> {
  const learned = await learnedOr(options.learned, sheet);
  const { copper, paper } = card.teach;
  return closeGlints(
    seeCopper(sheet, { teachCopper: copper, teachPaper: paper, learned }),
    sheet,
    hiddenOn(card),
  );
}
