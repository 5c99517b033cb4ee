import { components } from './components.ts';
import { squaredDistance } from './distance.ts';
import { boxRound } from './paperRound.ts';
import type { CopperMask } from './types.ts';

/** Half the width up to which copper between two strips is a sliver, mm: no tape is cut narrower. */
const halfMm = 1.1;
/** What the opening takes from the corners of a strip is no sliver, mm. */
const cornerMm = 0.3;
/** Copper within this of a sliver is beside it, and so much of its strips is asked how sure it is, mm. */
const besideMm = 0.5;
const stripsMm = 1.5;
/**
 * Median likelihood, 0..255, under which a sliver is doubted, where the strips that it joins have so much more: foil laid
 * there gives over 200 on drawn builds, what is seen into shade under 145 on path-traced photographs.
 */
const sureSliver = 150;
const surerStrips = 60;

/**
 * Opens slivers between two strips of which the net is not sure: paper there takes on the strips' warm light, and beside
 * a lamp its shade, so that it half passes for copper. A true sliver of foil is a mirror.
 */
export function openSlivers(mask: CopperMask): CopperMask {
  if (mask.by !== 'learned') return mask;
  const { width, height, pxPerMm } = mask;
  const core = opened(mask.filled, width, height, halfMm * pxPerMm, cornerMm * pxPerMm);
  const thin = Uint8Array.from(mask.filled, (v, k) => (v && !core[k] ? 1 : 0));
  const { labels, count } = components(thin, width, height, 8);
  const members: number[][] = Array.from({ length: count + 1 }, () => []);
  for (let k = 0; k < labels.length; k++) if (labels[k]) members[labels[k]].push(k);
  const filled = mask.filled.slice();
  const strict = mask.strict.slice();
  for (const each of members) {
    if (each.length < 2) continue;
    const sliver = Int32Array.from(each);
    const likely = medianOf(sliver, mask);
    if (likely >= sureSliver || !joinsTwo(sliver, core, mask)) continue;
    if (medianOf(copperBeside(sliver, core, mask), mask) < likely + surerStrips) continue;
    for (const k of sliver) filled[k] = strict[k] = 0;
  }
  return { ...mask, filled, strict };
}

/** What is left of a mask after all within `reach` px of its border is taken off and put on again, with `more` px. */
function opened(mask: Uint8Array, width: number, height: number, reach: number, more: number): Uint8Array {
  const outside = squaredDistance(
    mask.map((v) => 1 - v),
    width,
    height,
  );
  const inner = Uint8Array.from(outside, (d) => (d > reach * reach ? 1 : 0));
  const most = (reach + more) ** 2;
  const back = squaredDistance(inner, width, height);
  return mask.map((v, k) => (v && back[k] <= most ? 1 : 0));
}

const medianOf = (pixels: Int32Array, { likelihood }: CopperMask): number =>
  pixels.length ? pixels.map((k) => likelihood[k]).sort()[pixels.length >> 1] : 0;

function copperBeside(sliver: Int32Array, core: Uint8Array, mask: CopperMask): Int32Array {
  const { i0, i1, j0, j1 } = boxRound(sliver, mask, stripsMm);
  const found: number[] = [];
  for (let j = j0; j <= j1; j++)
    for (let k = j * mask.width + i0; k <= j * mask.width + i1; k++) if (core[k]) found.push(k);
  return Int32Array.from(found);
}

/** Whether the copper beside a sliver, as far as it lies near, is in two parts. */
function joinsTwo(sliver: Int32Array, core: Uint8Array, mask: CopperMask): boolean {
  const { width } = mask;
  const { i0, i1, j0, j1 } = boxRound(sliver, mask, besideMm);
  const [w, h] = [i1 - i0 + 1, j1 - j0 + 1];
  const near = new Uint8Array(w * h);
  for (let j = 0; j < h; j++)
    near.set(core.subarray((j0 + j) * width + i0, (j0 + j) * width + i1 + 1), j * w);
  const pieces = components(near, w, h, 4).labels;
  let first = 0;
  for (const k of sliver) {
    const n = (Math.floor(k / width) - j0) * w + (k % width) - i0;
    for (const beside of [n - 1, n + 1, n - w, n + w]) {
      const piece = pieces[beside];
      if (!piece) continue;
      if (first && piece !== first) return true;
      first = piece;
    }
  }
  return false;
}
