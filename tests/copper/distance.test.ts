import { expect, test } from 'vitest';
import { boxMean } from '../../src/copper/boxMean.ts';
import { squaredDistance } from '../../src/copper/distance.ts';
import { grow } from '../../src/copper/grow.ts';
import { seeded } from '../trace/creasedStrip.ts';
import { cv, matOf } from './openCvWasm.ts';

const random = seeded(3);
const [width, height] = [70, 50];
const sources = Uint8Array.from({ length: width * height }, () => (random() < 0.01 ? 1 : 0));

/** The same distances by an independent library: OpenCV 4.3, DIST_MASK_PRECISE. */
function theirDistances(): Float32Array {
  const mat = matOf(
    sources.map((m) => 1 - m),
    width,
    height,
  );
  const theirs = new cv.Mat();
  cv.distanceTransform(mat, theirs, cv.DIST_L2, cv.DIST_MASK_PRECISE);
  const distances = Float32Array.from(theirs.data32F as Float32Array);
  mat.delete();
  theirs.delete();
  return distances;
}

test('exact distances equal an independent library (OpenCV 4.3, DIST_MASK_PRECISE)', () => {
  const theirs = theirDistances();
  const ours = squaredDistance(sources, width, height);
  ours.forEach((d, k) => expect(Math.sqrt(d)).toBeCloseTo(theirs[k], 2));
});

test('a mask grows by what lies within reach, near and far, as the distances of an independent library tell', () => {
  const theirs = theirDistances();
  // Between the whole squares, so that neither side's rounding decides.
  for (const reach of [0.3, 1.2, 1.6, 2.1, 4.05, 7.7, 9.02, 13.06]) {
    const within = Uint8Array.from(theirs, (d) => (d <= reach ? 1 : 0));
    expect(grow(sources, width, height, reach)).toEqual(within);
  }
});

test('box means equal an independent library away from the border (OpenCV 4.3, boxFilter)', () => {
  const plane = Float32Array.from({ length: width * height }, () => random());
  const mat = cv.matFromArray(height, width, cv.CV_32FC1, [...plane]);
  const theirs = new cv.Mat();
  cv.boxFilter(mat, theirs, cv.CV_32F, new cv.Size(7, 7));
  const ours = boxMean(plane, width, height, 3);
  for (let j = 3; j < height - 3; j++) {
    for (let i = 3; i < width - 3; i++) {
      expect(ours[j * width + i]).toBeCloseTo(theirs.data32F[j * width + i], 5);
    }
  }
  mat.delete();
  theirs.delete();
});
