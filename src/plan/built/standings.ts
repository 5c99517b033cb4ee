import type { PlanStrip } from '../../card/index.ts';
import type { Traced } from '../../trace/index.ts';
import { boxOf } from '../strip/ribbon.ts';
import type { Ownership } from './ownership.ts';
import { standingOf } from './standing.ts';
import type { Cover } from './standing.ts';
import type { StripStanding } from './types.ts';

interface Known {
  owners: Ownership;
  /** By the strip and what covers it. */
  standings: Map<string, StripStanding>;
}

/** What was told of a trace; a brush stroke makes another trace. */
const known = new WeakMap<Traced, Known>();

/** `standingOf` every strip; those that a tap leaves as they were, and what lies on them, are not looked at again. */
export function standingsOf(
  strips: readonly PlanStrip[],
  owners: Ownership,
  covers: readonly Cover[],
  traced: Traced,
): StripStanding[] {
  const before = known.get(traced);
  const taken = before?.owners === owners ? before.standings : undefined;
  const standings = new Map<string, StripStanding>();
  known.set(traced, { owners, standings });
  return strips.map((strip, k) => {
    const over = coversOver(strip, covers);
    const of = JSON.stringify([k, strip, over]);
    const standing = taken?.get(of) ?? standingOf(strip, k, owners, over, traced);
    standings.set(of, standing);
    return standing;
  });
}

/** The covers that reach over a strip's box. */
function coversOver({ path, width_mm }: PlanStrip, covers: readonly Cover[]): Cover[] {
  const box = boxOf(path, width_mm);
  return covers.filter(
    ({ at: [x, y], radiusMm: r }) => x + r > box.x0 && x - r < box.x1 && y + r > box.y0 && y - r < box.y1,
  );
}
