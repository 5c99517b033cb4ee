/**
 * Solves A x = b for a symmetric positive definite band matrix by Cholesky factors. A and b are overwritten.
 * @param A row-major n*n, zero farther than `band` from the diagonal
 * @source Golub and Van Loan, Matrix Computations, sections 4.2 and 4.3
 */
export function solvePositive(A: Float64Array, b: Float64Array, n: number, band = n): Float64Array {
  for (let j = 0; j < n; j++) {
    const first = Math.max(0, j - band);
    const last = Math.min(n - 1, j + band);
    for (let i = j; i <= last; i++) {
      let sum = A[i * n + j];
      for (let k = Math.max(first, i - band); k < j; k++) sum -= A[i * n + k] * A[j * n + k];
      A[i * n + j] = i === j ? Math.sqrt(Math.max(sum, 1e-12)) : sum / A[j * n + j];
    }
  }
  for (let i = 0; i < n; i++) {
    for (let k = Math.max(0, i - band); k < i; k++) b[i] -= A[i * n + k] * b[k];
    b[i] /= A[i * n + i];
  }
  for (let i = n - 1; i >= 0; i--) {
    const last = Math.min(n - 1, i + band);
    for (let k = i + 1; k <= last; k++) b[i] -= A[k * n + i] * b[k];
    b[i] /= A[i * n + i];
  }
  return b;
}
