/**
 * Light of 8-bit sRGB codes, computed with 50 digits from the transfer curve of IEC 61966-2-1:
 * v / 12.92 up to 0.04045, ((v + 0.055) / 1.055)^2.4 above.
 */
export const srgbTransfer: readonly (readonly [code: number, linear: number])[] = [
  [0, 0],
  [1, 0.000303527],
  [5, 0.0015176349],
  [10, 0.0030352698],
  [11, 0.0033465358],
  [20, 0.0069954102],
  [50, 0.0318960331],
  [100, 0.1274376804],
  [119, 0.1844749945],
  [128, 0.2158605001],
  [150, 0.3049873141],
  [188, 0.502886458],
  [200, 0.5775804404],
  [230, 0.7912979403],
  [254, 0.9911020971],
  [255, 1],
];

/**
 * L*a*b* of sRGB colours with the matrix of IEC 61966-2-1 and white (0.95047, 1, 1.08883); with these four-digit
 * coefficients white itself gives (100, 0.005, -0.010).
 */
export const labColours: readonly {
  name: string;
  rgb: readonly [number, number, number];
  lab: readonly [number, number, number];
}[] = [
  { name: 'white', rgb: [255, 255, 255], lab: [100, 0.005, -0.01] },
  { name: 'black', rgb: [0, 0, 0], lab: [0, 0, 0] },
  { name: 'red', rgb: [255, 0, 0], lab: [53.233, 80.109, 67.22] },
  { name: 'green', rgb: [0, 255, 0], lab: [87.737, -86.185, 83.181] },
  { name: 'blue', rgb: [0, 0, 255], lab: [32.303, 79.197, -107.864] },
  { name: 'middle grey', rgb: [119, 119, 119], lab: [50.034, 0.003, -0.006] },
  { name: 'named copper', rgb: [184, 115, 51], lab: [54.752, 21.656, 45.395] },
  { name: 'polished copper', rgb: [250, 209, 194], lab: [86.908, 12.143, 12.804] },
  { name: 'polished copper, a quarter of the light', rgb: [134, 111, 103], lab: [48.781, 7.714, 7.833] },
  { name: 'kraft card', rgb: [179, 143, 111], lab: [61.978, 9.104, 22.187] },
];
