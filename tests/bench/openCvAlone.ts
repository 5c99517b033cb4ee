import { decodePhoto } from '../../src/photo/decodeNode.ts';
import { loadOpenCv } from '../../src/engine/openCv.ts';
import type { Cv } from '../../src/engine/openCv.ts';
import sharp from 'sharp';

/** Milliseconds of the OpenCV calls that do the like of a stage's work, median of three. */
export interface AloneMs {
  square: number;
  copper: number;
  trace: number;
}

/** @param sheet size of the squared picture, px */
export async function openCvAlone(
  photoPath: string,
  megapixels: number,
  sheet: { width: number; height: number },
): Promise<AloneMs> {
  const cv = await loadOpenCv();
  const { width = 1, height = 1 } = await sharp(photoPath).metadata();
  const scale = Math.sqrt((megapixels * 1e6) / (width * height));
  const jpeg = await sharp(photoPath)
    .resize(Math.round(width * scale))
    .jpeg()
    .toBuffer();
  const photo = await decodePhoto(jpeg, 'bench.jpg');
  const source = new cv.Mat(photo.height, photo.width, cv.CV_8UC4);
  source.data.set(photo.rgba);
  const squared = new cv.Mat();
  const square = median(3, () => squareUp(cv, source, squared, sheet));
  const copper = median(3, () => copperLike(cv, squared));
  const trace = median(3, () => traceLike(cv, squared));
  source.delete();
  squared.delete();
  return { square, copper, trace };
}

type Mat = InstanceType<Cv['Mat']>;

function squareUp(cv: Cv, source: Mat, to: Mat, sheet: { width: number; height: number }): void {
  const { cols: w, rows: h } = source;
  const from = cv.matFromArray(4, 1, cv.CV_32FC2, [
    0.1 * w,
    0.1 * h,
    0.9 * w,
    0.1 * h,
    0.9 * w,
    0.9 * h,
    0.1 * w,
    0.9 * h,
  ]);
  const corners = [0, 0, sheet.width, 0, sheet.width, sheet.height, 0, sheet.height];
  const into = cv.matFromArray(4, 1, cv.CV_32FC2, corners);
  const map = cv.getPerspectiveTransform(from, into);
  cv.warpPerspective(source, to, map, new cv.Size(sheet.width, sheet.height), cv.INTER_LINEAR);
  for (const mat of [from, into, map]) mat.delete();
}

/** Colour to Lab, three box means, an edge map, a threshold, its components. */
function copperLike(cv: Cv, squared: Mat): void {
  const [rgb, lab, mean, grey, edges, mask, labels] = Array.from({ length: 7 }, () => new cv.Mat());
  cv.cvtColor(squared, rgb, cv.COLOR_RGBA2RGB);
  cv.cvtColor(rgb, lab, cv.COLOR_RGB2Lab);
  for (const side of [5, 15, 51]) cv.blur(lab, mean, new cv.Size(side, side));
  cv.cvtColor(rgb, grey, cv.COLOR_RGB2GRAY);
  cv.Canny(grey, edges, 60, 120);
  cv.threshold(grey, mask, 0, 255, cv.THRESH_BINARY_INV + cv.THRESH_OTSU);
  cv.connectedComponents(mask, labels);
  for (const mat of [rgb, lab, mean, grey, edges, mask, labels]) mat.delete();
}

/** Components, distances and outlines of a mask. */
function traceLike(cv: Cv, squared: Mat): void {
  const [grey, mask, labels, distances, hierarchy] = Array.from({ length: 5 }, () => new cv.Mat());
  cv.cvtColor(squared, grey, cv.COLOR_RGBA2GRAY);
  cv.threshold(grey, mask, 0, 255, cv.THRESH_BINARY_INV + cv.THRESH_OTSU);
  cv.connectedComponents(mask, labels);
  cv.distanceTransform(mask, distances, cv.DIST_L2, 5);
  const outlines = new cv.MatVector();
  cv.findContours(mask, outlines, hierarchy, cv.RETR_CCOMP, cv.CHAIN_APPROX_NONE);
  outlines.delete();
  for (const mat of [grey, mask, labels, distances, hierarchy]) mat.delete();
}

function median(times: number, work: () => void): number {
  const taken = Array.from({ length: times }, () => {
    const begun = performance.now();
    work();
    return performance.now() - begun;
  });
  return taken.sort((a, b) => a - b)[times >> 1];
}
