import type { Card, PlanStrip } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { lengthOf, segmentsOf } from '../strip/ribbon.ts';
import type { Effort, Negotiated, Tree } from './negotiate.ts';
import { negotiate } from './negotiate.ts';
import { routeTask } from './routeTask.ts';
import type { Crossing, Routed, Rule } from './types.ts';

/** Widest and clearest first; 3 mm apart is usual by hand and 2 mm the least (common practice, no source). */
const RULES: Rule[] = [
  { widthMm: 5, clearanceMm: 3 },
  { widthMm: 5, clearanceMm: 2 },
  { widthMm: 4, clearanceMm: 2 },
  { widthMm: 3, clearanceMm: 2 },
  { widthMm: 2, clearanceMm: 2 },
];
const EFFORT: Effort = { rounds: 10, patience: 3, rise: 1.5 };
/** The first, second ... roomiest side of the cell for the strip that meets its upper face. */
const UPPER_SIDES = [0, 2, 4];
/** The grid rounds a pad's place by up to this much. */
const ENOUGH_ROOM_MM = 0.75;

/**
 * Strips that feed every lamp from the cell: a proposal to accept or drag. Wide tape and wide clearances are tried
 * first; where no tape finds a way without crossings, the crossings left are told, each to be laid over a patch.
 */
export function suggestRoute(card: Card): Routed {
  const contacts = card.lamps.some(({ intent }) => typeof intent === 'object');
  const sides = contacts ? (['plus', 'minus'] as const) : (['plus'] as const);
  const rules = RULES.filter(({ clearanceMm }) => clearanceMm >= card.limits.clearance_mm + ENOUGH_ROOM_MM);
  let fallback: Routed | undefined;
  for (const upper of UPPER_SIDES) {
    for (const rule of rules) {
      for (const broken of sides) {
        const routed = negotiate(routeTask(card, rule, broken, upper), rule, EFFORT);
        if (routed.stuck) continue;
        const result = described(routed, rule);
        if (routed.clear) return result;
        if (!fallback || result.crossings.length < fallback.crossings.length) fallback = result;
      }
    }
  }
  return fallback ?? { strips: [], crossings: [], rule: RULES[RULES.length - 1], tapeMm: 0, folds: 0 };
}

function described({ trees }: Negotiated, rule: Rule): Routed {
  const strips = trees.flatMap((tree) => stripsOf(tree, rule));
  return {
    strips,
    crossings: crossingsOf(strips),
    rule,
    tapeMm: strips.reduce((sum, { path }) => sum + lengthOf(path), 0),
    folds: strips.reduce((sum, { path }) => sum + path.length - 2, 0),
  };
}

function stripsOf({ net, branches }: Tree, { widthMm }: Rule): PlanStrip[] {
  return branches.map(({ terminal, path }) => ({
    id: `${net.id} to ${terminal.pad}`,
    net: net.id,
    width_mm: widthMm,
    path: path.map(([x, y]): [number, number] => [x, y]),
    on: 'base',
  }));
}

/** Where centre-lines of two nets meet. */
export function crossingsOf(strips: PlanStrip[]): Crossing[] {
  const found: Crossing[] = [];
  for (const [k, one] of strips.entries()) {
    for (const other of strips.slice(k + 1)) {
      if (one.net === other.net || one.on !== other.on) continue;
      for (const [a, b] of segmentsOf(one.path)) {
        for (const [c, d] of segmentsOf(other.path)) {
          const at = meeting(a, b, c, d);
          if (at) found.push({ at, nets: [one.net, other.net] });
        }
      }
    }
  }
  return found;
}

function meeting(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const [rx, ry] = [b[0] - a[0], b[1] - a[1]];
  const [sx, sy] = [d[0] - c[0], d[1] - c[1]];
  const cross = rx * sy - ry * sx;
  if (Math.abs(cross) < 1e-9 * Math.hypot(rx, ry) * Math.hypot(sx, sy)) return undefined;
  const t = ((c[0] - a[0]) * sy - (c[1] - a[1]) * sx) / cross;
  const u = ((c[0] - a[0]) * ry - (c[1] - a[1]) * rx) / cross;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? [a[0] + t * rx, a[1] + t * ry] : undefined;
}
