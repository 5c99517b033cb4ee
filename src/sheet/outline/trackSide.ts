/** An edge seen across a side: share t of its length, mm across it from the straight side, and its step in levels. */
export interface Sight {
  t: number;
  across: number;
  step: number;
}

/** mm across a side at a share of its length. */
export type Course = (t: number) => number;

const draws = 400;
/** An edge this near to a course speaks for it, mm. */
const nearMm = 0.35;
/** No side strays more than this from the line between its ends, mm. */
const mostSagMm = 4;
/** What a mm of sag costs, in parts of the places: of two courses that see as much, the straighter. */
const costOfSag = 0.02;
/** Two courses part where they are so far from each other, mm. */
const partedMm = 0.45;
/** Where a course parts from the known one it must run on the better edges at so many of the places: clutter gives half of them. */
const leastWhereParted = 0.7;
/** A course keeps to the one known before for at least this share of it: a line beside it is another thing. */
export const mostlyShared = 0.15;

/**
 * Of the several edges seen at each place along a side, those that one curl or one crease runs through: of many
 * parabolas and bent lines through three of them, the one with the most behind it.
 * @param places the edges at each place, strongest first
 * @param known what the side is held for so far
 * @param leastShared how much of the known course must be kept to, 0..1
 * @returns at most one edge a place
 * @source M. A. Fischler, R. C. Bolles, CACM 24(6) 1981
 */
export function trackSide(
  places: readonly (readonly Sight[])[],
  known: Course,
  leastShared: number,
): Sight[] {
  const seen = places.filter((edges) => edges.length > 0).sort(([a], [b]) => a.t - b.t);
  if (seen.length < 12) return [];
  const next = drawer();
  const pick = (from: number, to: number): Sight => {
    const edges = seen[Math.floor(seen.length * (from + (to - from) * next()))];
    return edges[Math.floor(edges.length * next() ** 2)];
  };
  let best = known;
  let most = support(best, seen);
  for (let n = 0; n < draws; n++) {
    const three = [pick(0, 0.33), pick(0.33, 0.67), pick(0.67, 1)] as const;
    if (three[1].t - three[0].t < 0.1 || three[2].t - three[1].t < 0.1) continue;
    for (const course of [curled(...three), creased(...three)]) {
      if (sagOf(course) > mostSagMm || shared(known, course) < leastShared) continue;
      const here = support(course, seen, most);
      if (here > most && leavesByEdges(known, course, seen)) [most, best] = [here, course];
    }
  }
  return nearest(best, places);
}

/** The edge at each place that lies nearest to a course, where one is near. */
function nearest(course: Course, places: readonly (readonly Sight[])[]): Sight[] {
  return places.flatMap((edges) => {
    const off = (s: Sight) => Math.abs(s.across - course(s.t));
    const near = edges.filter((s) => off(s) < 2 * nearMm);
    return near.length === 0 ? [] : [near.reduce((a, b) => (off(b) < off(a) ? b : a))];
  });
}

/**
 * How many places see the course, each by how near and how strong the edge is there, less what its sag costs.
 * @param toBeat once the places left cannot lift it over this, the rest is not looked at
 */
function support(course: Course, places: readonly (readonly Sight[])[], toBeat = -Infinity): number {
  let sum = -costOfSag * places.length * sagOf(course);
  for (const [k, edges] of places.entries()) {
    if (sum + places.length - k <= toBeat) return sum;
    let best = 0;
    for (const { t, across, step } of edges) {
      const off = (across - course(t)) / nearMm;
      if (off * off < 1) best = Math.max(best, ((1 - off * off) * step) / edges[0].step);
    }
    sum += best;
  }
  return sum;
}

/** Whether the places at which a course parts from the known one speak for it: a sheet that bows has no edge left there. */
function leavesByEdges(known: Course, course: Course, seen: readonly (readonly Sight[])[]): boolean {
  const parted = seen.filter(([{ t }]) => Math.abs(course(t) - known(t)) > partedMm);
  const better = parted.filter((edges) => strengthOn(course, edges) > strengthOn(known, edges));
  return better.length >= leastWhereParted * parted.length;
}

/** The strongest of a place's edges that lie on a course, in levels; 0 where none does. */
function strengthOn(course: Course, edges: readonly Sight[]): number {
  return Math.max(0, ...edges.filter((s) => Math.abs(s.across - course(s.t)) < nearMm).map((s) => s.step));
}

function sagOf(course: Course): number {
  let most = 0;
  for (let t = 0.1; t < 1; t += 0.1)
    most = Math.max(most, Math.abs(course(t) - course(0) * (1 - t) - course(1) * t));
  return most;
}

function shared(known: Course, course: Course): number {
  let near = 0;
  for (let k = 0; k <= 40; k++) if (Math.abs(course(k / 40) - known(k / 40)) < nearMm) near++;
  return near / 41;
}

function curled(p: Sight, q: Sight, r: Sight): Course {
  const first = (q.across - p.across) / (q.t - p.t);
  const bend = ((r.across - q.across) / (r.t - q.t) - first) / (r.t - p.t);
  return (t) => p.across + first * (t - p.t) + bend * (t - p.t) * (t - q.t);
}

function creased(p: Sight, q: Sight, r: Sight): Course {
  const before = (q.across - p.across) / (q.t - p.t);
  const after = (r.across - q.across) / (r.t - q.t);
  return (t) => q.across + (t < q.t ? before : after) * (t - q.t);
}

/** The same draws on every run, 0..1. @source S. K. Park, K. W. Miller, CACM 31(10) 1988 */
function drawer(): () => number {
  let state = 20231;
  return () => (state = (state * 48271) % 2147483647) / 2147483647;
}
