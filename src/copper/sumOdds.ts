import { chanceOf, logOddsOf } from './byteOdds.ts';

/** The share that the classical likelihood has in the log-odds; chosen on path-traced photographs. */
const classicalShare = 0.1;
/** Log-odds of the classical likelihood: 0 at its border, 128; steepness and limit as that cut deserves. */
const perUnit = 1 / 32;
const limit = 4;

let table: Uint8Array | undefined;

/**
 * Chances 0..255 of copper by the nets, weighed with the classical likelihood. Where the nets are in doubt (tape that mirrors a
 * coloured wall, a burnt-out stretch) the classical eye decides; where they are sure it cannot turn them.
 * @param likelihood as in `CopperMask`: 128 at the classical border
 */
export function sumOdds(chance: Uint8Array, likelihood: Uint8Array): Uint8Array {
  table ??= sums();
  const out = new Uint8Array(chance.length);
  for (let k = 0; k < out.length; k++) out[k] = table[(chance[k] << 8) | likelihood[k]];
  return out;
}

function sums(): Uint8Array {
  return Uint8Array.from({ length: 65536 }, (_, k) => {
    const byNets = logOddsOf(k >> 8);
    const byEye = Math.max(-limit, Math.min(limit, ((k & 255) - 128) * perUnit));
    return chanceOf((1 - classicalShare) * byNets + classicalShare * byEye);
  });
}
