import type { Card } from '../../card/index.ts';
import type { StageName } from '../../check/index.ts';
import type { Outline } from '../../sheet/index.ts';
import { call } from '../worker/client.ts';
import type { Renewed, RenewableStage } from '../worker/protocol.ts';
import { evaluateHere } from './evaluate.ts';
import { earlier } from './stageOf.ts';
import { bench, change } from './store.ts';
import { tellTrouble } from './trouble.ts';
import type { Shown } from './types.ts';

let wanted: RenewableStage | undefined;
let remembered: Outline | undefined;
let running: Promise<void> | undefined;

/**
 * Renews the check from a stage on. A part laid anew is worked out here and now, within a frame, on the copper as it was
 * traced; what else hangs on it follows when the maker rests. All else goes to the worker, one renewal at a time, the
 * latest card winning.
 * @param outline where the base was found before, so that it need not be looked for again
 */
export function renewNow(stage: RenewableStage, outline?: Outline): Promise<void> {
  if (outline) remembered = outline;
  if (!bench().shot) return Promise.resolve();
  if (stage === 'net' && evaluateHere()) {
    settleLater();
    return Promise.resolve();
  }
  return renewSoon(stage);
}

function renewSoon(stage: RenewableStage): Promise<void> {
  wanted = earlier(wanted, stage);
  running ??= work().finally(() => (running = undefined));
  return running;
}

async function work(): Promise<void> {
  while (wanted) {
    const from = wanted;
    wanted = undefined;
    const { card, shown, cardId } = bench();
    const outline = from === 'square' ? remembered : shown?.outline;
    remembered = undefined;
    const onStage = (stage: StageName) => change({ busy: stage });
    const behind = from === 'net' && shown !== undefined;
    if (!behind) onStage(from);
    try {
      const renewed = await call('renew', { from, card, outline }, behind ? {} : { onStage });
      settledFor = card;
      if (bench().cardId !== cardId) continue;
      change({ shown: together(shown, renewed) });
      if (bench().card === card) continue;
      evaluateHere();
      settleLater();
    } catch (error) {
      tellTrouble(error);
    }
  }
  change({ busy: undefined });
}

/** What was renewed, over what still stands. */
function together(before: Shown | undefined, renewed: Renewed): Shown | undefined {
  const picture = renewed.picture ?? before?.picture;
  const overlay = renewed.overlay ?? before?.overlay;
  const traced = renewed.traced ?? before?.traced;
  if (!picture || !overlay || !traced) return undefined;
  return { ...renewed, picture, overlay, traced };
}

/** The card that the worker last renewed the check for. */
let settledFor: Card | undefined;
let settling: ReturnType<typeof setTimeout> | undefined;
/** What takes longer than a frame waits until the maker rests, ms. */
const restMs = 300;

/** Has the copper about a part that was moved looked at again, and the build compared with the plan, behind the maker's back. */
function settleLater(): void {
  const { card } = bench();
  if ((['lamps', 'cell', 'patches', 'plan'] as const).every((key) => card[key] === settledFor?.[key])) return;
  clearTimeout(settling);
  settling = setTimeout(() => void renewSoon('net'), restMs);
}
