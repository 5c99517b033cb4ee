/** A side over its length: at0 + (at1 - at0) t + t (1 - t) (a + b (2 t - 1)), mm. */
export interface SideCurve {
  at0: number;
  at1: number;
  a: number;
  b: number;
  /** Root mean square of the points that belong to it, mm. */
  scatterMm: number;
}

/** Times the reach, round by round: wide enough at first for the strongest curl. */
const rounds = [24, 8, 4, 2, 1, 1, 1];
/** Points farther off than this in the end belong to a finger, a flap, a shadow, mm. */
const reachMm = 0.5;
/** A side of which less is seen, of some 140 places, is not bent by what is. */
const leastPoints = 80;

/**
 * The cubic through the points of one side, reweighted so that what lies off counts nothing.
 * @param points share t of the side's length, and mm across it
 * @source J. W. Tukey's biweight (from memory)
 */
export function fitSideCurve(
  points: readonly (readonly [t: number, across: number])[],
): SideCurve | undefined {
  let curve: number[] = [0, 0, 0, 0];
  let scatterMm = 0;
  for (const round of rounds) {
    const near = points.flatMap(([t, y]) => {
      const off = y - valueAt(curve, t);
      const share = off / (round * reachMm);
      return Math.abs(share) < 1 ? [{ t, y, off, w: (1 - share * share) ** 2 }] : [];
    });
    if (near.length < leastPoints) return undefined;
    const solved = leastSquares(near);
    if (!solved) return undefined;
    curve = solved;
    scatterMm = Math.sqrt(
      near.reduce((sum, { t, y }) => sum + (y - valueAt(solved, t)) ** 2, 0) / near.length,
    );
  }
  const [at0, at1, a, b] = curve;
  return { at0, at1, a, b, scatterMm };
}

const basis = (t: number) => [1 - t, t, t * (1 - t), t * (1 - t) * (2 * t - 1)];

function valueAt(curve: number[], t: number): number {
  return basis(t).reduce((sum, f, k) => sum + f * curve[k], 0);
}

/** Normal equations, solved by elimination with pivots. */
function leastSquares(points: { t: number; y: number; w: number }[]): number[] | undefined {
  const rows = Array.from({ length: 4 }, () => new Array<number>(5).fill(0));
  for (const { t, y, w } of points) {
    const f = basis(t);
    for (let i = 0; i < 4; i++) {
      for (let j = 0; j < 4; j++) rows[i][j] += w * f[i] * f[j];
      rows[i][4] += w * f[i] * y;
    }
  }
  for (let i = 0; i < 4; i++) {
    const best = rows
      .slice(i)
      .reduce((m, row, k) => (Math.abs(row[i]) > Math.abs(rows[m][i]) ? i + k : m), i);
    [rows[i], rows[best]] = [rows[best], rows[i]];
    if (Math.abs(rows[i][i]) < 1e-9) return undefined;
    for (let k = 0; k < 4; k++) {
      if (k === i) continue;
      const times = rows[k][i] / rows[i][i];
      for (let j = i; j < 5; j++) rows[k][j] -= times * rows[i][j];
    }
  }
  return rows.map((row, i) => row[4] / row[i]);
}
