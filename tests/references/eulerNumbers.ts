/**
 * Small shapes with their regions under 4 and 8 neighbours and their Euler numbers, worked by hand.
 * @source the counting formula: S. B. Gray, "Local properties of binary images in two dimensions", IEEE Trans. Computers
 * C-20(5) 1971: E4 = (Q1 - Q3 + 2 QD) / 4, E8 = (Q1 - Q3 - 2 QD) / 4 over all 2 x 2 windows
 */
export const eulerShapes: readonly {
  name: string;
  rows: string;
  n4: number;
  n8: number;
  e4: number;
  e8: number;
}[] = [
  { name: 'one pixel', rows: '#', n4: 1, n8: 1, e4: 1, e8: 1 },
  { name: 'two diagonal', rows: '#./.#', n4: 2, n8: 1, e4: 2, e8: 1 },
  { name: 'two with a gap of one', rows: '#.#', n4: 2, n8: 2, e4: 2, e8: 2 },
  { name: 'ring of 3', rows: '###/#.#/###', n4: 1, n8: 1, e4: 0, e8: 0 },
  { name: 'diamond ring', rows: '.#./#.#/.#.', n4: 4, n8: 1, e4: 4, e8: 0 },
  { name: 'plus', rows: '.#./###/.#.', n4: 1, n8: 1, e4: 1, e8: 1 },
  { name: 'eight', rows: '###/#.#/###/#.#/###', n4: 1, n8: 1, e4: -1, e8: -1 },
  { name: 'checkers of 3', rows: '#.#/.#./#.#', n4: 5, n8: 1, e4: 5, e8: 1 },
];

/** Euler number of a mask by Gray's window counts. */
export function eulerNumber(
  mask: ArrayLike<number>,
  width: number,
  height: number,
  neighbours: 4 | 8,
): number {
  const at = (i: number, j: number): number =>
    i >= 0 && j >= 0 && i < width && j < height && mask[j * width + i] ? 1 : 0;
  let one = 0;
  let three = 0;
  let diagonal = 0;
  for (let j = -1; j < height; j++) {
    for (let i = -1; i < width; i++) {
      const [a, b, c, d] = [at(i, j), at(i + 1, j), at(i, j + 1), at(i + 1, j + 1)];
      const sum = a + b + c + d;
      if (sum === 1) one++;
      if (sum === 3) three++;
      if (sum === 2 && a === d) diagonal++;
    }
  }
  return (one - three + (neighbours === 4 ? 2 : -2) * diagonal) / 4;
}
