import type { Card } from '../../card/index.ts';
import type { Ring } from '../../geometry/index.ts';
import type { Finding } from '../../net/index.ts';
import { buildNetlist } from '../../net/index.ts';
import type { Netlist } from '../../net/index.ts';
import type { Crossing } from '../route/index.ts';
import { crossingsOf } from '../route/index.ts';
import { trace } from '../../trace/index.ts';
import { paintPlan } from './paintPlan.ts';

/** A crossing that no patch parts yet, and the patch that would. */
export interface OpenCrossing extends Crossing {
  patch: Ring;
}

export interface PlanChecks {
  crossings: OpenCrossing[];
  /** What the checker says of the plan laid as drawn: clearances, polarity, states. */
  findings: Finding[];
  states: Netlist['states'];
}

/** A patch is wider than both strips by this much a side (common practice). */
const PATCH_ROOM_MM = 3;

/** Crossings of planned nets that no patch parts. */
export function openCrossings(card: Card): OpenCrossing[] {
  const strips = card.plan?.strips ?? [];
  const widest = Math.max(0, ...strips.map(({ width_mm }) => width_mm));
  return crossingsOf(strips)
    .filter(({ at }) => !card.patches.some(({ outline }) => holds(outline, at)))
    .map((crossing) => ({ ...crossing, patch: patchFor(crossing, widest) }));
}

/** Live checks of a plan while it is drawn: crossings by geometry, all else by the checker's own stages. */
export function planChecks(card: Card): PlanChecks {
  const { findings, states } = buildNetlist(trace(paintPlan(card)), card);
  return { crossings: openCrossings(card), findings, states };
}

function patchFor({ at: [x, y] }: Crossing, widthMm: number): Ring {
  const reach = widthMm / 2 + PATCH_ROOM_MM;
  return [
    [x - reach, y - reach],
    [x + reach, y - reach],
    [x + reach, y + reach],
    [x - reach, y + reach],
  ];
}

/** Whether a ring holds a place: crossings of a ray to the right. @source Shimrat, "Algorithm 112", CACM 5 (1962) */
function holds(ring: Ring, [x, y]: readonly [number, number]): boolean {
  let inside = false;
  for (let k = 0, last = ring.length - 1; k < ring.length; last = k++) {
    const [ax, ay] = ring[k];
    const [bx, by] = ring[last];
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) inside = !inside;
  }
  return inside;
}
