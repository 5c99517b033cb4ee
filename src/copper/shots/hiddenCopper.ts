import { boxMean } from '../boxMean.ts';
import { components } from '../components.ts';
import type { CopperLook } from './copperLook.ts';

/** Unlikeness below which a place passes for paper, and above which for copper; restlessness above which copper is creased. */
const paperlike = 0.35;
const copperlike = 0.6;
const creased = 0.4;
/** mm: a narrower place is an edge that lies a little beside the other's; a wider one than any tape is no tape. */
const leastWide = 1;
const mostWide = 9;
/** mm: what comes this near to the sheet's border reaches in from outside. */
const brim = 1;

/**
 * Where another shot tells more than the first. The first shows paper there or is burnt out, and the other shows creased
 * copper: no brighter than paper, restless, and no part of anything wider than tape or reaching in over the sheet's border,
 * as fingers do. Where the first is burnt out and the other shows paper, that tells more, too.
 * @param over the other shot's look, already laid over the first
 * @returns 0..1, soft at the borders, in the looks' planes
 */
export function hiddenCopper(first: CopperLook, over: CopperLook, pxPerMm: number): Float32Array {
  const { width, height } = first.unlike;
  const mean: Mean = (plane, reach) => boxMean(plane, width, height, reach);
  const [own, other, light] = [first.unlike.values, over.unlike.values, over.light].map((p) => mean(p, 1));
  const mute = Uint8Array.from(own, (v, k) => (v < paperlike || first.burnt[k] ? 1 : 0));
  const alien = mute.map((v, k) => (v && other[k] > paperlike ? 1 : 0));
  const laid = laidOn(alien, width, height, pxPerMm);
  const restless = restlessness(over, mean, Math.round(0.8 * pxPerMm));
  const telling = Float32Array.from(mute, (v, k) => {
    const copper = v && !laid[k] && other[k] > copperlike && light[k] < 1 && restless[k] > creased;
    return copper || (first.burnt[k] && !over.burnt[k] && other[k] < paperlike) ? 1 : 0;
  });
  const least = Math.max(1, Math.round((leastWide * pxPerMm) / 2));
  const whole = shrunk(grown(telling, 1, mean), 1, mean);
  return mean(grown(shrunk(whole, least, mean), least + 1, mean), 1);
}

type Mean = (plane: Float32Array, reach: number) => Float32Array;

const shrunk = (plane: Float32Array, reach: number, mean: Mean): Float32Array =>
  mean(plane, reach).map((v) => (v > 0.999 ? 1 : 0));
const grown = (plane: Float32Array, reach: number, mean: Mean): Float32Array =>
  mean(plane, reach).map((v) => (v > 1e-4 ? 1 : 0));

/** Of what the first shot does not show, the regions that are wider than tape somewhere or come in over the border. */
function laidOn(alien: Uint8Array, width: number, height: number, pxPerMm: number): Uint8Array {
  const { labels, count } = components(alien, width, height);
  const filled = boxMean(alien, width, height, Math.round((mostWide * pxPerMm) / 2));
  const edge = Math.round(brim * pxPerMm);
  const out = new Uint8Array(count + 1);
  for (let j = 0, k = 0; j < height; j++) {
    const outer = j < edge || j >= height - edge;
    for (let i = 0; i < width; i++, k++)
      if (labels[k] && (outer || i < edge || i >= width - edge || filled[k] > 0.999)) out[labels[k]] = 1;
  }
  return Uint8Array.from(labels, (label) => out[label]);
}

/** Mean step of lightness about each pixel, of those inside what is unlike paper: an outline is no crease. */
function restlessness({ unlike, steps }: CopperLook, mean: Mean, reach: number): Float32Array {
  const stands = unlike.values.map((v) => (v > paperlike ? 1 : 0));
  const inside = mean(stands, 1).map((v) => (v > 0.999 ? 1 : 0));
  const sum = mean(
    inside.map((v, k) => v * steps[k]),
    reach,
  );
  const share = mean(inside, reach);
  return sum.map((v, k) => (share[k] > 0.1 ? v / share[k] : 0));
}
