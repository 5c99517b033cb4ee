import { Matrix, solve } from 'ml-matrix';
import { certaintyBy, classOf, logOdds, type Curve } from '../../../src/net/index.ts';
import type { Example } from './examples.ts';

/** Spread of a kind's shift, of a class's about its kind's, and of slopes about the middle one: few examples move little. */
const kindSpread = 1;
const classSpread = 0.7;
const slopeSpread = 0.4;
/** Findings of a kind, and of a class with its kind's curve for a prior, that a curve takes at least. */
const leastExamples = 5;
/** The least a curve may rise. */
const leastSlope = 0.1;

export type Curves = Record<string, Curve>;

/** What the picture leaves open is another matter than what it shows, and so is what may be covered. */
const isApart = ({ by }: Example): boolean => isOpen({ by }) || by === 'wide';

const isOpen = ({ by }: Pick<Example, 'by'>): boolean => by === 'unsure' || by === 'fine';

/**
 * A curve for each kind and class seen: maximum a posteriori, a kind's curve being its classes' prior. Kinds start from
 * what their rules say.
 */
export function fitCurves(all: readonly Example[]): Curves {
  const examples = apart(all);
  const curves: Curves = {};
  const plain = { shift: 0, slope: 1 };
  for (const [kind, own] of groups(examples, ({ kind }) => kind)) {
    // A fault that no photograph truly has, or that was hardly ever told, cannot be fitted: its rule stands.
    if (own.length < leastExamples || !own.some(({ right }) => right)) continue;
    const whole = fitOne(
      own.filter((each) => !isApart(each)),
      plain,
      kindSpread,
    );
    curves[kind] = whole;
    for (const [name, some] of groups(own, ({ by }) => classOf(own[0].kind, by)))
      if (name !== kind && (isApart(some[0]) || some.length >= leastExamples))
        curves[name] = isApart(some[0]) ? fitOne(some, plain, kindSpread) : fitOne(some, whole, classSpread);
  }
  return curves;
}

/** Findings of one kind in one photograph err together: many of them count as the root of their number. */
function apart(examples: readonly Example[]): Example[] {
  const same = ({ photo, kind, by }: Example): string => `${photo} ${classOf(kind, by)}`;
  const counts = new Map([...groups(examples, same)].map(([key, own]) => [key, own.length]));
  return examples.map((each) => ({ ...each, weight: each.weight / Math.sqrt(counts.get(same(each))!) }));
}

/** Logistic regression by Newton's steps. */
function fitOne(examples: readonly Example[], prior: Curve, shiftSpread: number): Curve {
  const pull = [1 / shiftSpread ** 2, 1 / slopeSpread ** 2];
  const wanted = [prior.shift, prior.slope];
  let curve = [...wanted];
  for (let step = 0; step < 60; step++) {
    const slope = curve.map((v, c) => -pull[c] * (v - wanted[c]));
    const bend = Matrix.diag(pull);
    for (const { evidence, right, weight } of examples) {
      const row = [1, logOdds(evidence)];
      const p = 1 / (1 + Math.exp(-(curve[0] + curve[1] * row[1])));
      row.forEach((v, c) => {
        slope[c] += weight * v * ((right ? 1 : 0) - p);
        row.forEach((u, d) => bend.set(c, d, bend.get(c, d) + weight * u * v * p * (1 - p)));
      });
    }
    const move = solve(bend, Matrix.columnVector(slope)).to1DArray();
    curve = curve.map((v, c) => v + Math.max(-1, Math.min(1, move[c])));
  }
  return { shift: round(curve[0]), slope: Math.max(leastSlope, round(curve[1])) };
}

/** What the curves give for an example. */
export function certaintyOf(curves: Curves, example: Example): number {
  const { kind, by, evidence } = example;
  const curve = curves[classOf(kind, by)];
  const chance = curve ? certaintyBy(curve, evidence) : evidence;
  return isOpen(example) ? Math.min(0.49, chance) : chance;
}

function groups(examples: readonly Example[], of: (e: Example) => string): Map<string, Example[]> {
  const found = new Map<string, Example[]>();
  for (const each of examples) found.set(of(each), [...(found.get(of(each)) ?? []), each]);
  return found;
}

const round = (v: number): number => Math.round(1000 * v) / 1000;
