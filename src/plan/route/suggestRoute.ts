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
const UPPER_SIDES = [0, 2, 4, 1, 3];
/** The grid rounds a pad's place by up to this much. */
const ENOUGH_ROOM_MM = 0.75;

/**
 * Strips that feed every lamp from the cell: a proposal to accept or drag. Where narrow tape finds a way without
 * crossings, wide tape and wide clearances are tried before it; where none does, the crossings left are told, each to
 * be laid over a patch.
 */
export function suggestRoute(card: Card): Routed {
  const contacts = card.lamps.some(({ intent }) => typeof intent === 'object');
  const sides = contacts ? (['plus', 'minus'] as const) : (['plus'] as const);
  const rules = RULES.filter(({ clearanceMm }) => clearanceMm >= card.limits.clearance_mm + ENOUGH_ROOM_MM);
  // A side of the cell is worth the whole row of rules if the narrowest tape, or the broadest laid close, gets through.
  const probes = [...new Set([rules.at(-1), rules[1]])].filter((rule) => rule !== undefined);
  let fallback: Routed = { strips: [], crossings: [], rule: RULES[RULES.length - 1], tapeMm: 0, folds: 0 };
  for (const upper of UPPER_SIDES) {
    const tried = new Map<string, Laid | undefined>();
    const lay = (rule: Rule, broken: 'plus' | 'minus') => {
      const key = `${rule.widthMm} ${rule.clearanceMm} ${broken}`;
      if (!tried.has(key)) tried.set(key, layBy(card, rule, broken, upper));
      return tried.get(key);
    };
    const first = (among: Rule[]) => {
      for (const rule of among) {
        for (const broken of sides) {
          const laid = lay(rule, broken);
          if (laid?.clear) return laid.routed;
        }
      }
      return undefined;
    };
    if (first(probes)) return first(rules)!;
    const probed = [...tried.values()];
    for (const each of probed) {
      const better =
        !fallback.strips.length || (each && each.routed.crossings.length < fallback.crossings.length);
      if (each && better) fallback = each.routed;
    }
  }
  return fallback;
}

interface Laid {
  routed: Routed;
  clear: boolean;
}

/** One way of laying; undefined where a pad cannot be reached at all. */
function layBy(card: Card, rule: Rule, broken: 'plus' | 'minus', upper: number): Laid | undefined {
  const negotiated = negotiate(routeTask(card, rule, broken, upper), rule, EFFORT);
  if (negotiated.stuck) return undefined;
  return { routed: described(negotiated, rule), clear: negotiated.clear };
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
