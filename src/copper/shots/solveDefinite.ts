/**
 * Solves A x = b by elimination, for a symmetric positive definite A (so no pivoting is needed). Both are overwritten.
 * @param A row-major, n*n
 */
export function solveDefinite(A: Float64Array, b: Float64Array, n: number): Float64Array {
  for (let p = 0; p < n; p++) {
    for (let q = p + 1; q < n; q++) {
      const share = A[q * n + p] / A[p * n + p];
      for (let c = p; c < n; c++) A[q * n + c] -= share * A[p * n + c];
      b[q] -= share * b[p];
    }
  }
  for (let p = n - 1; p >= 0; p--) {
    for (let c = p + 1; c < n; c++) b[p] -= A[p * n + c] * b[c];
    b[p] /= A[p * n + p];
  }
  return b;
}
