import type { Outline } from '../../sheet/index.ts';
import { takenOf } from '../shoot/takenOf.ts';
import { call } from '../worker/client.ts';
import { goAlong } from './goTo.ts';
import { renewNow } from './renew.ts';
import { bench, change } from './store.ts';
import { tellTrouble } from './trouble.ts';
import type { KeptShot } from './types.ts';

/**
 * Takes a photograph onto the bench and checks it. A file that cannot be read is refused with a sentence, and the
 * card and the photograph before it stay.
 */
export async function takePhoto(file: Blob, name: string): Promise<void> {
  change({ busy: 'decode', notice: undefined });
  try {
    const { width, height } = await call('open', { name, file });
    const { card } = bench();
    const { corners_px: _gone, ...fresh } = card;
    const shot = { name, file, taken: await takenOf(file), width, height };
    change({
      shot,
      again: undefined,
      shown: undefined,
      card: { ...fresh, touch_up: [], teach: { copper: [], paper: [] } },
    });
    change({ past: [], future: [] });
    goAlong('square');
    await renewNow('square');
  } catch (error) {
    change({ busy: undefined });
    tellTrouble(error);
  }
}

/**
 * Opens the photograph of a card that was kept or saved: its corners and strokes belong to it and stay.
 * @param known further shots of the same sheet, and where the base was found before
 */
export async function reopenPhoto(
  { name, file, taken }: KeptShot,
  known: { again?: KeptShot[]; outline?: Outline } = {},
): Promise<void> {
  change({ busy: 'decode' });
  try {
    const { width, height } = await call('open', { name, file });
    if (known.again) await call('again', { shots: known.again });
    change({ shot: { name, file, taken, width, height }, again: known.again });
    await renewNow('square', known.outline);
  } catch (error) {
    change({ busy: undefined });
    tellTrouble(error);
  }
}
