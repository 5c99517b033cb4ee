/** Half the widest break that is looked for, mm. */
const reachMm = 1;
/** A break is where the chance, sure on both sides, falls below the second figure; 0..255. */
const sureBeside = 215;
const doubtful = 190;
/** What a break is set to. */
const open = 69;

/**
 * Opens breaks that the fine map shows as a thin valley in sure copper but that the mean of scales has closed.
 * @param seen the mean map, changed in place
 * @param fine the map at full scale
 */
export function openThinGaps(
  seen: Uint8Array,
  fine: Uint8Array,
  width: number,
  height: number,
  pxPerMm: number,
): void {
  const closed = closing(fine, width, height, Math.round(reachMm * pxPerMm));
  for (let k = 0; k < seen.length; k++)
    if (closed[k] > sureBeside && fine[k] < doubtful && seen[k] > open) seen[k] = open;
}

/** Grey closing by a square of 2 * reach + 1 pixels: fills what is darker than both sides and no wider than that. */
export function closing(map: Uint8Array, width: number, height: number, reach: number): Uint8Array {
  const grown = spread(spread(map, width, height, reach, false, 0), width, height, reach, true, 0);
  return spread(spread(grown, width, height, reach, false, 255), width, height, reach, true, 255);
}

/** Greatest (`flip` 0) or least (`flip` 255) value within `reach` along rows or columns. */
function spread(
  map: Uint8Array,
  width: number,
  height: number,
  reach: number,
  down: boolean,
  flip: 0 | 255,
): Uint8Array {
  const length = down ? height : width;
  const step = down ? width : 1;
  const out = new Uint8Array(map.length);
  const line = new Uint8Array(length + 2 * reach);
  for (let n = 0; n < map.length / length; n++) {
    const start = down ? n : n * width;
    line.fill(0);
    for (let i = 0; i < length; i++) line[i + reach] = map[start + i * step] ^ flip;
    widen(line, 2 * reach + 1);
    for (let i = 0; i < length; i++) out[start + i * step] = line[i] ^ flip;
  }
  return out;
}

/** Replaces each value by the greatest of the `window` values from it on, by doubling steps. */
function widen(line: Uint8Array, window: number): void {
  for (let have = 1; have < window;) {
    const step = Math.min(have, window - have);
    for (let i = 0; i + step < line.length; i++) if (line[i + step] > line[i]) line[i] = line[i + step];
    have += step;
  }
}
