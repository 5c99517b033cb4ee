/**
 * Usual sizes of a base, mm, upright.
 * @source ISO 216 for the A sizes; inch cards by their inches (1 in = 25.4 mm)
 */
export const sizes = {
  A4: [210, 297],
  A5: [148, 210],
  A6: [105, 148],
  A7: [74, 105],
  '3.5x5': [88.9, 127],
  '4x6': [101.6, 152.4],
  '4.25x5.5': [107.95, 139.7],
  '5x7': [127, 177.8],
  '8.5x11': [215.9, 279.4],
  square4: [101.6, 101.6],
} as const satisfies Record<string, readonly [number, number]>;

export type SizeName = keyof typeof sizes;

/** The usual size that these numbers are, either way up. */
export function nameOfSize(width: number, height: number): SizeName | undefined {
  const [short, long] = width < height ? [width, height] : [height, width];
  const names = Object.keys(sizes) as SizeName[];
  return names.find(
    (name) => Math.abs(sizes[name][0] - short) < 0.05 && Math.abs(sizes[name][1] - long) < 0.05,
  );
}
