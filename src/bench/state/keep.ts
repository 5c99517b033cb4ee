import type { Card } from '../../card/index.ts';
import { benchWords } from '../../words/bench.ts';
import { latestKept, writeKept, type Kept } from './shelf.ts';
import { cardWith } from './openCard.ts';
import { goAlong } from './goTo.ts';
import { bench, change, subscribe } from './store.ts';
import { reopenPhoto } from './takePhoto.ts';
import { tellNotKept } from './tellNotKept.ts';

/** Time from the last change to keeping, ms: short enough to lose nothing, long enough not to write at every move. */
const restMs = 250;

const tabs = new BroadcastChannel('foilproof-cards');
const tabId = crypto.randomUUID();
let timer: ReturnType<typeof setTimeout> | undefined;
let last: ReturnType<typeof worthKeeping> | undefined;
/** While a card is being laid out, nothing of it is news. */
let layingOut = false;

/** Keeps the card on this device after every change from now on, and minds other tabs on the same card. */
export function keepFromNowOn(): void {
  last = worthKeeping();
  subscribe(() => {
    const now = worthKeeping();
    if (layingOut || same(now, last)) return;
    last = now;
    clearTimeout(timer);
    timer = setTimeout(() => void keepNow(), restMs);
  });
  const flush = () => void (timer !== undefined && keepNow());
  addEventListener('pagehide', flush);
  document.addEventListener('visibilitychange', flush);
  tabs.onmessage = ({ data }: MessageEvent<{ cardId: string; from: string }>) => {
    if (data.cardId === bench().cardId && data.from !== tabId) tellOtherTab();
  };
}

function worthKeeping() {
  const { cardId, card, shot, again, step, shown } = bench();
  return { cardId, card, shot, again, step, outline: shown?.outline };
}

type Worth = ReturnType<typeof worthKeeping>;

function same(a: Worth, b: Worth | undefined): boolean {
  return b !== undefined && (Object.keys(a) as (keyof Worth)[]).every((key) => a[key] === b[key]);
}

async function keepNow(): Promise<void> {
  clearTimeout(timer);
  timer = undefined;
  const { cardId, card, shot, again, step, shown, kept } = bench();
  if (!shot && card.lamps.length === 0 && !card.title && !card.plan) return;
  const photo = shot && { name: shot.name, file: shot.file, taken: shot.taken };
  const at = new Date().toISOString();
  const entry = { cardId, card, photo, again, step, outline: shown?.outline, at, writer: tabId };
  try {
    const revision = await writeKept(entry, kept?.revision ?? 0);
    if (revision === undefined) return tellOtherTab();
    if (bench().cardId === cardId) change({ kept: { at, revision } });
    tabs.postMessage({ cardId, from: tabId });
  } catch (error) {
    tellNotKept(error);
  }
}

/** The same card was changed in another tab: the maker says which one goes on. */
function tellOtherTab(): void {
  const { otherTab, takeTheirs, keepMine } = benchWords.keep;
  const acts = [
    { label: takeTheirs, act: () => void restore(bench().cardId) },
    {
      label: keepMine,
      act: () => change({ cardId: crypto.randomUUID(), kept: undefined, notice: undefined }),
    },
  ];
  change({ notice: { tone: 'trouble', text: otherTab, acts } });
}

/** Brings back a kept card, or the one kept last. */
export async function restore(cardId?: string): Promise<void> {
  const kept = await latestKept(cardId).catch(() => undefined);
  if (kept) await layOut(kept);
}

export async function layOut({
  cardId,
  card,
  photo,
  again,
  step,
  outline,
  at,
  revision,
}: Kept): Promise<void> {
  await quietly(card, async () => {
    cardWith(card, cardId);
    change({ kept: { at, revision } });
    goAlong(step);
    if (photo) await reopenPhoto(photo, { again, outline });
  });
}

/** Lays a card out without keeping it again, unless the maker has changed it meanwhile. */
export async function quietly(card: Card, lay: () => Promise<void>): Promise<void> {
  layingOut = true;
  await lay();
  layingOut = false;
  last = worthKeeping();
  if (bench().card !== card) await keepNow();
}
