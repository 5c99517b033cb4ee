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
 * Renews the check from a stage on. A part laid anew is worked out here and now, within a frame; all else goes to the
 * worker, one renewal at a time, the latest card winning.
 * @param outline where the base was found before, so that it need not be looked for again
 */
export function renewNow(stage: RenewableStage, outline?: Outline): Promise<void> {
  if (outline) remembered = outline;
  if (!bench().shot) return Promise.resolve();
  if (stage === 'net' && !running && evaluateHere()) {
    compareLater();
    return Promise.resolve();
  }
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
      comparedFor = card;
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

/** The card that the plan was last compared for. */
let comparedFor: Card | undefined;
let comparing: ReturnType<typeof setTimeout> | undefined;
/** Comparing with the plan waits until the maker rests, ms. */
const restMs = 300;

/** Has the build compared with the plan again, behind the maker's back, where a part that it looks at has changed. */
function compareLater(): void {
  const { card } = bench();
  if (!card.plan || (['lamps', 'cell', 'plan'] as const).every((key) => card[key] === comparedFor?.[key]))
    return;
  clearTimeout(comparing);
  comparing = setTimeout(() => void compare().catch(tellTrouble), restMs);
}

async function compare(): Promise<void> {
  const { card, shown } = bench();
  if (running || !shown) return;
  const { compared } = await call('renew', { from: 'net', card, outline: shown.outline });
  const now = bench().shown;
  if (now?.traced !== shown.traced) return;
  comparedFor = card;
  change({ shown: { ...now, compared } });
  evaluateHere();
  compareLater();
}
