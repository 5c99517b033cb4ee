import { chanceOf, logOddsOf } from '../byteOdds.ts';

/** One reading of a picture among several: chances 0..255 and its share of the say. */
export interface Say {
  chances: Uint8Array;
  share: number;
}

/** Steps of log-odds in which the mean is looked up: some 30 to a chance where chances lie farthest apart. */
const steps = 2000;
const least = logOddsOf(0);
const chanceAt = Uint8Array.from({ length: Math.ceil(-2 * least * steps) + 1 }, (_, n) =>
  chanceOf(least + (n + 0.5) / steps),
);

/**
 * Weighted mean of three maps of chances 0..255 by their log-odds, so that a sure answer outweighs a doubtful one.
 * @source logarithmic opinion pool: C. Genest, J. V. Zidek, Statistical Science 1 (1986) 114-135
 */
export function meanOdds(says: readonly [Say, Say, Say]): Uint8Array {
  const whole = says.reduce((sum, { share }) => sum + share, 0);
  const [a, b, c] = says.map(({ chances }) => chances);
  const [oddsA, oddsB, oddsC] = says.map(({ share }) =>
    Float32Array.from({ length: 256 }, (_, v) => (share / whole) * (logOddsOf(v) - least) * steps),
  );
  const out = new Uint8Array(a.length);
  for (let k = 0; k < out.length; k++)
    if (a[k] + b[k] + c[k]) out[k] = chanceAt[(oddsA[a[k]] + oddsB[b[k]] + oddsC[c[k]]) | 0];
  return out;
}
