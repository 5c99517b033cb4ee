import { chanceOf, logOddsOf } from '../byteOdds.ts';

/** One reading of a picture among several: chances 0..255 and its share of the say. */
export interface Say {
  chances: Uint8Array;
  share: number;
}

/**
 * Weighted mean of maps of chances 0..255 by their log-odds, so that a sure answer outweighs a doubtful one.
 * @source logarithmic opinion pool: C. Genest, J. V. Zidek, Statistical Science 1 (1986) 114-135
 */
export function meanOdds(says: readonly Say[]): Uint8Array {
  const whole = says.reduce((sum, { share }) => sum + share, 0);
  const odds = says.map(({ share }) =>
    Float32Array.from({ length: 256 }, (_, v) => (share / whole) * logOddsOf(v)),
  );
  const out = new Uint8Array(says[0].chances.length);
  for (let k = 0; k < out.length; k++) {
    let sum = 0;
    for (let n = 0; n < says.length; n++) sum += odds[n][says[n].chances[k]];
    out[k] = chanceOf(sum);
  }
  return out;
}
