/** Log-odds of a chance 0..255; half a step from either end, so that none is without bounds. */
export const logOddsOf = (chance: number): number => Math.log((chance + 0.5) / (255.5 - chance));

/** The chance 0..255 of log-odds, to be cut off to a byte. */
export const chanceOf = (logOdds: number): number => 255 / (1 + Math.exp(-logOdds)) + 0.5;
