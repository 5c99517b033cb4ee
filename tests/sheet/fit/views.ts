import { decodePhoto } from '../../../src/photo/decodeNode.ts';
import { baseMap } from '../../../src/sheet/learned/index.ts';
import { namesIn, readEntry } from '../../exam/readSet.ts';
import { shoot } from '../scenes/shoot.ts';
import type { View } from './gather.ts';

/** Made-up scenes; half of them hard, and every third looked at without the trained map: it may fail to load. */
export async function* scenes(firstSeed: number, count: number): AsyncGenerator<View> {
  for (let seed = firstSeed; seed < firstSeed + count; seed++) {
    const { photo, base, corners } = await shoot(seed, seed % 2 === 1);
    yield { photo, base, corners, net: seed % 3 === 0 ? undefined : await baseMap(photo) };
    if (seed % 20 === 0) process.stderr.write(`${seed - firstSeed + 1} of ${count} scenes\n`);
  }
}

/** The photographs of a folder with truth whose number is even; the odd ones are left to judge by. */
export async function* evenOf(folder: string): AsyncGenerator<View> {
  for (const name of await namesIn(folder)) {
    const { photoPath, card, cornersPx } = await readEntry(folder, name);
    if (!cornersPx || Number(/\d+/.exec(name)?.[0]) % 2 !== 0) continue;
    const photo = await decodePhoto(photoPath);
    const base = { width: card.base.width_mm, height: card.base.height_mm };
    yield { photo, base, corners: cornersPx, net: await baseMap(photo) };
  }
}
