import { bench, change } from '../state/store.ts';
import { tellTrouble } from '../state/trouble.ts';
import { call } from '../worker/client.ts';

/** Has the sheet read, beside all else; what is read of another picture than the one shown by then is dropped. */
export async function readSheet(): Promise<void> {
  const { card, shown, reading } = bench();
  if (!shown || reading !== undefined) return;
  const { picture } = shown;
  change({ reading: 0, written: undefined });
  try {
    const read = await call('read', { card }, { onShare: (share) => change({ reading: share }) });
    if (!read.stopped && bench().shown?.picture === picture) change({ written: { read, picture } });
  } catch (error) {
    tellTrouble(error);
  }
  change({ reading: undefined });
}

export function stopReading(): void {
  void call('stopReading', null);
}
