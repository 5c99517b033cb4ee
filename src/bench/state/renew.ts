import type { StageName } from '../../check/index.ts';
import type { Outline } from '../../sheet/index.ts';
import { call } from '../work/client.ts';
import type { Renewed, RenewableStage } from '../work/protocol.ts';
import { evaluateHere } from './evaluate.ts';
import { earlier } from './stageOf.ts';
import { bench, change } from './store.ts';
import { tellTrouble } from './trouble.ts';
import type { Shown } from './types.ts';

let wanted: RenewableStage | undefined;
let remembered: Outline | undefined;
let running: Promise<void> | undefined;

/**
 * Renews the check from a stage on. A part laid anew is worked out here and now, within a frame; all else goes to the
 * worker, one renewal at a time, the latest card winning.
 * @param outline where the base was found before, so that it need not be looked for again
 */
export function renewNow(stage: RenewableStage, outline?: Outline): Promise<void> {
  if (outline) remembered = outline;
  if (!bench().shot) return Promise.resolve();
  if (stage === 'net' && !running && evaluateHere()) return Promise.resolve();
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
    change({ busy: from });
    try {
      const onStage = (stage: StageName) => change({ busy: stage });
      const renewed = await call('renew', { from, card, outline }, { onStage });
      if (bench().cardId === cardId) change({ shown: together(shown, renewed) });
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
