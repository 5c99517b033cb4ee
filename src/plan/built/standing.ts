import type { PlanStrip } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { isUnseen, type Traced } from '../../trace/index.ts';
import { walk } from '../strip/ribbon.ts';
import { pieceAt } from './copperAt.ts';
import type { Ownership } from './ownership.ts';
import { othersAt } from './ownership.ts';
import type { StripStanding } from './types.ts';

/** A part of the sheet that something lies on, so that copper there is not seen: a lamp, the cell. */
export interface Cover {
  at: Point;
  radiusMm: number;
}

const STEP_MM = 0.75;
const SEARCH_MM = 7;
const COARSE_MM = 0.7;
const FINE_MM = 0.1;
/** Paper is asked for this far beyond a strip's edge. */
const BESIDE_MM = 0.6;
/** Nearer than this a strip is where the plan has it. */
export const LEAST_SHIFT_MM = 1.2;
const LAID = 0.75;
const ABSENT = 0.35;
/** A shift must explain this much more than the planned place does. */
const GAIN = 0.12;
const MIDDLE = 1;
const LEAST_SEEN = 4;
/** A strip of which the photograph shows less is not told. */
const LEAST_SHARE = 0.25;
/** What a mm of a shift must explain: a strip moved along itself looks nearly the same. */
const WAY_COST = 0.04;
/** So well in place that no search is needed. */
const PLAIN = 0.85;

/** One place along a strip: what should be copper (by one edge, in the middle, by the other edge), what should be paper. */
interface Probe {
  inside: Point[];
  outside: Point[];
}

/**
 * Whether a planned strip is there, in place or beside it. Probes along it ask for copper inside and paper beside,
 * where no other planned strip lies; the whole strip is moved about until they agree best.
 */
export function standingOf(
  strip: PlanStrip,
  index: number,
  owners: Ownership,
  covers: Cover[],
  traced: Traced,
): StripStanding {
  const others = (p: Point) => othersAt(owners, index, p);
  const probes = probesOf(strip, others, covers);
  const read = (move: Point) => readingOf(probes, move, others, traced);
  const base = { id: strip.id, net: strip.net, shiftMm: [0, 0] as Point };
  const here = read([0, 0]);
  if (here.seen < LEAST_SEEN || here.seen < LEAST_SHARE * probes.length) {
    const blind = probes.filter(({ inside }) => isUnseen(traced, inside[MIDDLE])).length;
    return { ...base, standing: blind >= LEAST_SEEN ? 'blind' : 'unseen', covered: 0 };
  }
  if (here.score >= PLAIN) return { ...base, standing: 'laid', covered: here.inside };
  const best = bestMove(read);
  const moved = Math.hypot(...best.move) >= LEAST_SHIFT_MM && best.score > here.score + GAIN;
  if (moved && best.inside >= LAID) {
    return { ...base, standing: 'shifted', covered: best.inside, shiftMm: best.move };
  }
  if (here.inside >= LAID) return { ...base, standing: 'laid', covered: here.inside };
  return { ...base, standing: here.inside < ABSENT ? 'to-lay' : 'partly', covered: here.inside };
}

function probesOf(strip: PlanStrip, others: (p: Point) => boolean, covers: Cover[]): Probe[] {
  const half = strip.width_mm / 2;
  return walk(strip.path, STEP_MM)
    .map(({ at, along }) => {
      const aside = (s: number): Point => [at[0] - s * along[1], at[1] + s * along[0]];
      const own = (p: Point) => !others(p);
      return {
        inside: [-0.85 * half, 0, 0.85 * half].map(aside).filter(own),
        outside: [-half - BESIDE_MM, half + BESIDE_MM].map(aside).filter(own),
      };
    })
    .filter(({ inside }) => inside.length === 3 && !covers.some((c) => under(c, inside[1])));
}

const under = ({ at, radiusMm }: Cover, p: Point) => Math.hypot(p[0] - at[0], p[1] - at[1]) < radiusMm;

interface Reading {
  move: Point;
  /** Share of the centre-line that is copper. */
  inside: number;
  /** Share of copper inside, less half of what should be paper and is not. */
  score: number;
  seen: number;
}

function readingOf(probes: Probe[], move: Point, others: (p: Point) => boolean, traced: Traced): Reading {
  const moved = ([x, y]: Point): Point => [x + move[0], y + move[1]];
  let asked = 0;
  let copper = 0;
  let seen = 0;
  let middle = 0;
  let beside = 0;
  let wrong = 0;
  for (const { inside, outside } of probes) {
    for (const [k, p] of inside.entries()) {
      const piece = pieceAt(traced, moved(p));
      if (piece < 0) continue;
      asked++;
      if (k === MIDDLE) seen++;
      // Copper under another planned strip speaks for that one.
      if (piece === 0 || others(moved(p))) continue;
      copper++;
      if (k === MIDDLE) middle++;
    }
    for (const p of outside) {
      const piece = pieceAt(traced, moved(p));
      if (piece < 0 || others(moved(p))) continue;
      beside++;
      if (piece > 0) wrong++;
    }
  }
  const score = (asked ? copper / asked : 0) - (beside ? (0.5 * wrong) / beside : 0);
  return { move, inside: seen ? middle / seen : 0, score, seen };
}

/** Coarse search over a square, then finely round the best; each mm of the way costs, so that none is made along the strip in vain. */
function bestMove(read: (move: Point) => Reading): Reading {
  const rough = search(read, [0, 0], SEARCH_MM, COARSE_MM);
  return search(read, rough.move, COARSE_MM, FINE_MM);
}

function search(read: (move: Point) => Reading, round: Point, reach: number, step: number): Reading {
  const worth = (r: Reading) => r.score - WAY_COST * Math.hypot(...r.move);
  let best = read(round);
  const n = Math.round(reach / step);
  for (let j = -n; j <= n; j++) {
    for (let i = -n; i <= n; i++) {
      const reading = read([round[0] + i * step, round[1] + j * step]);
      if (worth(reading) > worth(best)) best = reading;
    }
  }
  return best;
}
