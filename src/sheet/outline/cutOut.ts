import { loadOpenCv } from '../../engine/openCv.ts';
import { grabCut, grabCutHint } from '../../engine/grabCut.ts';
import type { Point, Quad } from '../../geometry/index.ts';
import { applyHomography, homographyFromUnitSquare, invertHomography } from '../homography.ts';
import type { BaseMap } from '../learned/index.ts';
import type { WorkPicture } from './work.ts';

const longSide = 240;
const rounds = 3;

/**
 * Cuts the sheet out of the picture by its colours, from a first guess.
 * @param guess corners in work px; the middle of the picture when there is none
 * @returns 1 where the sheet is, 0 elsewhere
 */
export async function cutOut(work: WorkPicture, guess: Quad | undefined): Promise<BaseMap> {
  const cv = await loadOpenCv();
  const step = Math.max(work.width, work.height) / longSide;
  const width = Math.floor(work.width / step);
  const height = Math.floor(work.height / step);
  const rgb = sampled(work, width, height, step);
  const hints = hintsFrom(guess ?? middleOf(work), width, height, step);
  const cut = grabCut(cv, rgb, width, height, hints, rounds);
  return { width, height, prob: Float32Array.from(cut) };
}

/** The picture again as RGB, at a few work px a pixel. */
function sampled(
  { planes, width: from }: WorkPicture,
  width: number,
  height: number,
  step: number,
): Uint8Array {
  const rgb = new Uint8Array(width * height * 3);
  for (let y = 0, o = 0; y < height; y++) {
    for (let x = 0; x < width; x++, o += 3) {
      const p = Math.floor((y + 0.5) * step) * from + Math.floor((x + 0.5) * step);
      const [l, rg, b] = [planes[0][p], planes[1][p], planes[2][p]];
      // l = (r + 2g + b) / 4, rg = r - g, b' = b - (r + g) / 2
      const green = l - (3 * rg) / 8 - b / 4;
      rgb[o] = clamp(green + rg);
      rgb[o + 1] = clamp(green);
      rgb[o + 2] = clamp(green + rg / 2 + b);
    }
  }
  return rgb;
}

const clamp = (v: number) => Math.min(255, Math.max(0, Math.round(v)));

/** Within the guess probably sheet; well outside it surely not; between the two probably not. */
function hintsFrom(guess: Quad, width: number, height: number, step: number): Uint8Array {
  const toUnit = invertHomography(homographyFromUnitSquare(guess));
  const hints = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [u, v] = applyHomography(toUnit, [(x + 0.5) * step, (y + 0.5) * step]);
      const out = Math.max(-u, -v, u - 1, v - 1);
      hints[y * width + x] =
        out < 0
          ? grabCutHint.probablyForeground
          : out < 0.3
            ? grabCutHint.probablyBackground
            : grabCutHint.background;
    }
  }
  return hints;
}

function middleOf({ width: w, height: h }: WorkPicture): Quad {
  const at = (x: number, y: number): Point => [x * w, y * h];
  return [at(0.25, 0.25), at(0.75, 0.25), at(0.75, 0.75), at(0.25, 0.75)];
}
