/** The best way across a strip from side to side that starts in each row. */
export interface SidePaths {
  /** Mean evidence along the way that starts at row s. */
  mean: Float32Array;
  /** Row of the way at each column: rowAt(s)[t]. */
  rowsFrom: (s: number) => Int32Array;
}

/**
 * Dynamic programming: ways that go one column on at each step and at most one row up or down, with the greatest sum.
 * @param evidence row-major [s * columns + t]
 */
export function sidePaths(evidence: Float32Array, rows: number, columns: number): SidePaths {
  const step = new Int8Array(rows * columns);
  let next = new Float32Array(rows);
  for (let s = 0; s < rows; s++) next[s] = evidence[s * columns + columns - 1];
  for (let t = columns - 2; t >= 0; t--) {
    const here = new Float32Array(rows);
    for (let s = 0; s < rows; s++) {
      let best = next[s];
      let way = 0;
      if (s > 0 && next[s - 1] - 0.1 > best) [best, way] = [next[s - 1] - 0.1, -1];
      if (s + 1 < rows && next[s + 1] - 0.1 > best) [best, way] = [next[s + 1] - 0.1, 1];
      here[s] = best + evidence[s * columns + t];
      step[s * columns + t] = way;
    }
    next = here;
  }
  const rowsFrom = (s: number): Int32Array => {
    const way = new Int32Array(columns);
    for (let t = 0; t < columns; t++) {
      way[t] = s;
      s += step[s * columns + t];
    }
    return way;
  };
  return { mean: next.map((sum) => sum / columns), rowsFrom };
}
