/**
 * The value that would stand in the middle were the list sorted, at `length >> 1`: found by parting it again and again,
 * which takes time in proportion to its length. The list is left in another order; none of it may be NaN.
 * @source C. A. R. Hoare, Algorithm 65: Find, CACM 4 (1961)
 */
export function middleOf(values: Float32Array | Float64Array): number {
  const middle = values.length >> 1;
  let low = 0;
  let high = values.length - 1;
  while (low < high) {
    const pivot = medianOfThree(values[low], values[(low + high) >> 1], values[high]);
    let i = low;
    let j = high;
    while (i <= j) {
      while (values[i] < pivot) i++;
      while (values[j] > pivot) j--;
      if (i > j) break;
      const held = values[i];
      values[i++] = values[j];
      values[j--] = held;
    }
    if (middle <= j) high = j;
    else if (middle >= i) low = i;
    else break;
  }
  return values[middle];
}

const medianOfThree = (a: number, b: number, c: number): number =>
  Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
