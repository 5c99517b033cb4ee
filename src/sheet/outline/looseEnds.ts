/** Stretches of a side, each held or not: neighbouring places stray together. */
const stretches = 20;
/** So many places, of some seven, hold a stretch fully. */
const fullyHeld = 4;
/** In parts of a stretch: keeps the sums soluble where nothing is seen. */
const ridge = 1e-3;
/** Error at a corner, in parts of that of one stretch, of a side seen all along. */
const atBest = 0.85;

/**
 * How loosely the corners are held by what is seen of the sides: the error that a parabola through the seen stretches has at the
 * ends. A side hidden towards an end is carried on over the hidden part, and where a sheet may curl nothing says that it goes on straight.
 * @param sides shares 0..1 of the length of each side at which its edge is seen
 * @returns 0 where every side is seen all along, 0.3 where a sixth of one is hidden at its end, more with more; at most 1.5
 */
export function looseEnds(sides: readonly (readonly number[])[]): number {
  const error = Math.max(...sides.map(errorAtEnds));
  return Math.min(1.5, Math.max(0, Math.log(error / atBest) / 2));
}

function errorAtEnds(places: readonly number[]): number {
  const held = new Float64Array(stretches);
  for (const t of places) held[Math.min(stretches - 1, Math.max(0, Math.floor(t * stretches)))]++;
  const m = [ridge, 0, ridge / 3, 0, ridge / 5];
  held.forEach((n, k) => {
    const u = (2 * (k + 0.5)) / stretches - 1;
    for (let power = 0; power < 5; power++) m[power] += Math.min(1, n / fullyHeld) * u ** power;
  });
  return Math.sqrt(Math.max(varianceAt(-1, m), varianceAt(1, m)));
}

/** Variance of a least-squares parabola at a place -1..1, by the moments 0 to 4 of the places that it is laid through. */
function varianceAt(u: number, [a, b, c, d, e]: number[]): number {
  const inverse = [c * e - d * d, c * d - b * e, b * d - c * c, a * e - c * c, b * c - a * d, a * c - b * b];
  const det = a * inverse[0] + b * inverse[1] + c * inverse[2];
  const [p, q, r, s, t, v] = inverse.map((x) => x / det);
  return p + 2 * u * q + u ** 2 * (2 * r + s) + 2 * u ** 3 * t + u ** 4 * v;
}
