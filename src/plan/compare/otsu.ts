/**
 * The grey value that parts a picture best in two classes: pixels at or under it are dark.
 * @param grey 0..255
 * @source Otsu, "A threshold selection method from gray-level histograms", IEEE Trans. SMC 9 (1979)
 */
export function otsu(grey: Uint8Array): number {
  const bins = new Float64Array(256);
  for (const v of grey) bins[v]++;
  let total = 0;
  for (let v = 0; v < 256; v++) total += v * bins[v];
  let best = 0;
  let most = -1;
  let below = 0;
  let sumBelow = 0;
  for (let v = 0; v < 255; v++) {
    below += bins[v];
    sumBelow += v * bins[v];
    const above = grey.length - below;
    if (!below || !above) continue;
    const apart = sumBelow / below - (total - sumBelow) / above;
    const between = below * above * apart * apart;
    if (between > most) [most, best] = [between, v];
  }
  return best;
}
