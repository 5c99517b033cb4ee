import type { Random } from '../generate/random.ts';

/** A picture file spoilt: bytes flipped, cut off, doubled, its header's sizes changed, or plain noise. */
export function badPhoto(random: Random, sound: Uint8Array): Uint8Array {
  // A Buffer's own slice shares its bytes: spoilt, the sound file would be spoilt for all that follow.
  const good = new Uint8Array(sound);
  const way = random.next();
  if (way < 0.1) return Uint8Array.from({ length: random.next() * 400 }, () => random.next() * 256);
  if (way < 0.3) return good.slice(0, random.next() * good.length);
  const bytes = good;
  if (way < 0.4) return new Uint8Array([...bytes, ...bytes.subarray(random.next() * bytes.length)]);
  const header = way < 0.65;
  const flips = 1 + Math.floor(random.next() * 12);
  for (let n = 0; n < flips; n++) {
    const at = Math.floor(random.next() * (header ? Math.min(700, bytes.length) : bytes.length));
    bytes[at] = random.pick([0, 1, 127, 128, 255, bytes[at] ^ (1 << Math.floor(random.next() * 8))]);
  }
  return bytes;
}
