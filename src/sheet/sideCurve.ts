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
const leastPoints = 60;
/** A bend, and then a swing, are taken where so many more of the points, in parts of them, then lie on the side. */
const worth = { bend: 0.05, swing: 0.12 };
/** Neither is where one end of the side is hidden: of each last fifth so much must be seen, in parts of the rest. */
const leastAtEnds = 0.35;
/** So far off, and no farther, a point still lies on the side, mm. */
const onMm = 0.3;

/**
 * The straight line, parabola or cubic through the points of one side, reweighted so that what lies off counts nothing;
 * the simplest that does.
 * @param points share t of the side's length, and mm across it
 * @source J. W. Tukey's biweight (from memory)
 */
export function fitSideCurve(
  points: readonly (readonly [t: number, across: number])[],
): SideCurve | undefined {
  const line = fitTerms(points, 2);
  const curve = better(line, fitTerms(points, 3), worth.bend, points);
  return better(curve, fitTerms(points, 4), curve === line ? worth.bend + worth.swing : worth.swing, points);
}

/** The richer curve where enough more of the points lie on it, and some at both its ends. */
function better(
  plain: SideCurve | undefined,
  rich: SideCurve | undefined,
  least: number,
  points: readonly (readonly [number, number])[],
): SideCurve | undefined {
  if (!rich || !seenAtEnds(rich, points)) return plain;
  // A strong curl leaves a straight line with too few points to be one.
  if (!plain) return rich;
  return support(rich, points) > support(plain, points) + least * points.length ? rich : plain;
}

function seenAtEnds(curve: SideCurve, points: readonly (readonly [number, number])[]): boolean {
  // Points begin a twentieth from each end.
  const fair = (support(curve, points) * 0.15) / 0.9;
  return [points.filter(([t]) => t < 0.2), points.filter(([t]) => t > 0.8)].every(
    (end) => support(curve, end) > leastAtEnds * fair,
  );
}

function support({ at0, at1, a, b }: SideCurve, points: readonly (readonly [number, number])[]): number {
  return points.reduce((sum, [t, y]) => {
    const share = (y - valueAt([at0, at1, a, b], t)) / onMm;
    return sum + Math.max(0, 1 - share * share);
  }, 0);
}

function fitTerms(
  points: readonly (readonly [t: number, across: number])[],
  terms: number,
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
    const solved = leastSquares(near, terms);
    if (!solved) return undefined;
    curve = solved;
    scatterMm = Math.sqrt(
      near.reduce((sum, { t, y }) => sum + (y - valueAt(solved, t)) ** 2, 0) / near.length,
    );
  }
  const [at0, at1, a, b] = curve;
  return { at0, at1, a: a ?? 0, b: b ?? 0, scatterMm };
}

const basis = (t: number) => [1 - t, t, t * (1 - t), t * (1 - t) * (2 * t - 1)];

function valueAt(curve: number[], t: number): number {
  return basis(t).reduce((sum, f, k) => sum + f * (curve[k] ?? 0), 0);
}

/** Normal equations of the first `terms` of the basis, solved by elimination with pivots. */
function leastSquares(points: { t: number; y: number; w: number }[], terms: number): number[] | undefined {
  const rows = Array.from({ length: terms }, () => new Array<number>(terms + 1).fill(0));
  for (const { t, y, w } of points) {
    const f = basis(t);
    for (let i = 0; i < terms; i++) {
      for (let j = 0; j < terms; j++) rows[i][j] += w * f[i] * f[j];
      rows[i][terms] += w * f[i] * y;
    }
  }
  for (let i = 0; i < terms; i++) {
    const best = rows
      .slice(i)
      .reduce((m, row, k) => (Math.abs(row[i]) > Math.abs(rows[m][i]) ? i + k : m), i);
    [rows[i], rows[best]] = [rows[best], rows[i]];
    if (Math.abs(rows[i][i]) < 1e-9) return undefined;
    for (let k = 0; k < terms; k++) {
      if (k === i) continue;
      const times = rows[k][i] / rows[i][i];
      for (let j = i; j <= terms; j++) rows[k][j] -= times * rows[i][j];
    }
  }
  return rows.map((row, i) => row[terms] / row[i]);
}
