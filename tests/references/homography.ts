import type { Homography, Quad } from '../../src/geometry/index.ts';

/**
 * Worked examples of the unit-square and rectangle to quadrilateral map, exact to the digits given.
 * @source construction of P. S. Heckbert, Fundamentals of Texture Mapping and Image Warping, 1989, section 2.2.3;
 * the numbers were worked with exact fractions apart from this project
 */
export const homographyExamples: {
  name: string;
  size: { width: number; height: number };
  quad: Quad;
  matrix: Homography;
}[] = [
  {
    name: 'unit square to a general quadrilateral',
    size: { width: 1, height: 1 },
    quad: [
      [1, 1],
      [5, 2],
      [4, 5],
      [2, 4],
    ],
    matrix: [18 / 7, 19 / 7, 1, 3 / 7, 45 / 7, 1, -2 / 7, 6 / 7, 1],
  },
  {
    name: 'A6 card, 148 x 105 mm, to pixels',
    size: { width: 148, height: 105 },
    quad: [
      [320, 410],
      [3540, 350],
      [3700, 2600],
      [180, 2480],
    ],
    matrix: [
      19.9475797182, -1.47354336631, 320, -0.584278841417, 17.7825030377, 410, -0.000511066960034,
      -0.000778944627669, 1,
    ],
  },
  {
    name: 'a parallelogram has no perspective',
    size: { width: 1, height: 1 },
    quad: [
      [0, 0],
      [2, 0],
      [3, 1],
      [1, 1],
    ],
    matrix: [2, 1, 0, 0, 1, 0, 0, 0, 1],
  },
];
