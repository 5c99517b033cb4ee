import { takenOf } from '../shoot/takenOf.ts';
import { call } from '../worker/client.ts';
import { renewNow } from './renew.ts';
import { bench, change } from './store.ts';
import { tellTrouble } from './trouble.ts';
import type { KeptShot } from './types.ts';

/** Lays a further shot of the same sheet over the first; one that cannot be read is refused and all stays as it was. */
export async function shootAgain(file: Blob, name: string): Promise<void> {
  const taken = await takenOf(file);
  return withShots([...(bench().again ?? []), { name, file, taken }]);
}

/** Goes back without a further shot. */
export function dropShot(index: number): Promise<void> {
  return withShots((bench().again ?? []).filter((_, n) => n !== index));
}

async function withShots(again: KeptShot[]): Promise<void> {
  const { shown } = bench();
  change({ busy: 'decode', notice: undefined });
  try {
    await call('again', { shots: again });
    change({ again });
    await renewNow('square', shown?.outline);
  } catch (error) {
    change({ busy: undefined });
    tellTrouble(error);
  }
}
