import { expect, test } from 'vitest';
import { boxMean } from '../../src/copper/boxMean.ts';
import { squaredDistance } from '../../src/copper/distance.ts';
import { seeded } from '../trace/creasedStrip.ts';
import { cv, matOf } from './openCvWasm.ts';

const random = seeded(3);
const [width, height] = [70, 50];
const sources = Uint8Array.from({ length: width * height }, () => (random() < 0.01 ? 1 : 0));

test('exact distances equal an independent library (OpenCV 4.3, DIST_MASK_PRECISE)', () => {
  const mat = matOf(
    sources.map((m) => 1 - m),
    width,
    height,
  );
  const theirs = new cv.Mat();
  cv.distanceTransform(mat, theirs, cv.DIST_L2, cv.DIST_MASK_PRECISE);
  const ours = squaredDistance(sources, width, height);
  ours.forEach((d, k) => expect(Math.sqrt(d)).toBeCloseTo(theirs.data32F[k], 2));
  mat.delete();
  theirs.delete();
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
