/**
 * Wright's omega on the real line: the y > 0 with y + ln y = z, that is W(e^z) with Lambert's W, without overflow.
 * Accurate to a few units in the last place.
 * @source Corless and Jeffrey, "The Wright omega function", 2002; the step is Fritsch, Shafer and Crowley's, CACM 16(2), 1973
 */
export function wrightOmega(z: number): number {
  if (z < -50) return Math.exp(z);
  let y = firstGuess(z);
  for (let i = 0; i < 3; i++) {
    const miss = z - y - Math.log(y);
    if (Math.abs(miss) < 1e-16 * Math.abs(z)) break;
    const t = 2 * (1 + y) * (1 + y + (2 / 3) * miss);
    y *= 1 + (miss / (1 + y)) * ((t - miss) / (t - 2 * miss));
  }
  return y;
}

function firstGuess(z: number): number {
  if (z < -1) return Math.exp(z) * (1 - Math.exp(z) * 0.8);
  if (z > 2) return z - Math.log(z);
  return 0.5671432904097838 + z * (0.3618962 + 0.07 * z); // about omega(0) with its slope omega/(1+omega)
}
