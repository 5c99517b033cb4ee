import type { RgbPicture } from '../../engine/planes.ts';
import { linearOf } from '../lab.ts';

/** The darkest and the brightest of a sheet, by share of its pixels; dark is what is so in one of its three colours. */
const darkest = 0.005;
const brightest = 0.99;
/** A veil lies over a sheet whose darkest shines with that part of the brightest; beyond the last nothing dark is there to tell it by. */
const veiled = { from: 0.14, surely: 0.18, atMost: 0.45 };
/** Light that even the darkest gives of itself, of the most a picture holds. */
const ownLight = 0.02;

/**
 * The picture without a veil of stray light (a lamp into the lens, haze, a pane between): foil, print and shade lack one of
 * the three colours somewhere on every sheet, so what light is added to all is seen there. K. He, J. Sun, X. Tang, "Single
 * image haze removal using dark channel prior", CVPR 2009, with one veil for the whole sheet, in the linear light of
 * IEC 61966-2-1. The brightest stays as bright.
 * @returns the very picture given where no veil is seen
 */
export function clearHaze(picture: RgbPicture): RgbPicture {
  const [dark, bright] = darkAndBright(picture.rgb);
  const part = dark / bright;
  const sure = Math.min(1, Math.max(0, part - veiled.from) / (veiled.surely - veiled.from));
  const veil = sure * (dark - ownLight);
  if (!(veil > 0) || part > veiled.atMost) return picture;
  const cleared = Uint8Array.from(linearOf, (v) =>
    Math.round(255 * encoded(((v - veil) * bright) / (bright - veil))),
  );
  return { ...picture, rgb: picture.rgb.map((v) => cleared[v]) };
}

/** Light of the darkest and the brightest, 0..1, linear; what lies outside of the photograph is black through and through and does not count. */
function darkAndBright(rgb: RgbPicture['rgb']): [number, number] {
  const [darks, lights] = [new Uint32Array(1001), new Uint32Array(1001)];
  let all = 0;
  for (let k = 0; k + 2 < rgb.length; k += 12) {
    const [r, g, b] = [linearOf[rgb[k]], linearOf[rgb[k + 1]], linearOf[rgb[k + 2]]];
    if (r + g + b === 0) continue;
    darks[Math.round(1000 * Math.min(r, g, b))]++;
    lights[Math.round(1000 * (0.2126 * r + 0.7152 * g + 0.0722 * b))]++;
    all++;
  }
  return [levelOf(darks, darkest * all), levelOf(lights, brightest * all)];
}

/** The level, of thousandths, up to which so many lie. */
function levelOf(counts: Uint32Array, many: number): number {
  let [level, sum] = [0, counts[0]];
  while (sum < many && level < counts.length - 1) sum += counts[++level];
  return level / 1000;
}

function encoded(linear: number): number {
  const v = Math.min(1, Math.max(0, linear));
  return v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055;
}
