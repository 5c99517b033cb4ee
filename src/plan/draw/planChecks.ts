import type { Card, Patch, PlanStrip } from '../../card/index.ts';
import { insideRing } from '../../geometry/index.ts';
import type { Point, Ring } from '../../geometry/index.ts';
import type { Finding, Netlist } from '../../net/index.ts';
import { buildNetlist } from '../../net/index.ts';
import type { PowerReport } from '../../power/index.ts';
import { solveStates } from '../../power/index.ts';
import { trace } from '../../trace/index.ts';
import type { Crossing } from '../route/index.ts';
import { crossingsOf } from '../route/index.ts';
import { paintPlan } from './paintPlan.ts';

/** A crossing that no patch parts yet, and the patch that would, with the strip that runs beneath it. */
export interface OpenCrossing extends Crossing {
  patch: Pick<Patch, 'outline' | 'beneath'>;
}

export interface PlanChecks {
  crossings: OpenCrossing[];
  /** What the checker says of the plan laid as drawn: clearances, polarity, lamps that nothing feeds. */
  findings: Finding[];
  states: Netlist['states'];
  /** Which lamp lights in which state, and how much it draws. */
  power: PowerReport;
}

/** A patch is wider than both strips by this much a side (common practice). */
const PATCH_ROOM_MM = 3;

/** Crossings of planned nets that no patch parts. */
export function openCrossings(card: Card): OpenCrossing[] {
  const strips = card.plan?.strips ?? [];
  const widest = Math.max(0, ...strips.map(({ width_mm }) => width_mm));
  return crossingsOf(strips)
    .filter(({ at }) => !card.patches.some(({ outline }) => insideRing(at, outline)))
    .map((crossing) => ({ ...crossing, patch: patchFor(crossing, strips, widest) }));
}

/**
 * Live checks of a plan while it is drawn: crossings by geometry, all else by the checker's own stages, each open crossing
 * being taken as parted by the patch that it asks for, so that it is told once and hides nothing behind it.
 */
export function planChecks(card: Card): PlanChecks {
  const crossings = openCrossings(card);
  const asked = crossings.map(({ patch }, k) => ({ ...patch, id: `${ASKED} ${k}`, strips: [] }));
  const parted = { ...card, patches: [...card.patches, ...asked] };
  const traced = trace(paintPlan(parted));
  const netlist = buildNetlist(traced, parted);
  const findings = netlist.findings.filter(({ sheet }) => !sheet.startsWith(ASKED));
  const power = solveStates(netlist, traced, parted, { depth: 'states' });
  return { crossings, findings, states: netlist.states, power };
}

const ASKED = 'patch asked for';

/** Paper between the two: the strip laid first stays beneath, the other runs over it. */
function patchFor(
  { at: [x, y], nets }: Crossing,
  strips: PlanStrip[],
  widthMm: number,
): OpenCrossing['patch'] {
  const reach = widthMm / 2 + PATCH_ROOM_MM;
  const outline = boxRing([x - reach, y - reach], [x + reach, y + reach]);
  return { outline, beneath: laidFirst(strips, outline, nets) };
}

/**
 * A patch drawn from corner to corner over whatever lies there; where nets cross under it the one laid first is beneath.
 * @returns undefined where the box is too small for paper
 */
export function patchOver(card: Card, a: Point, b: Point): OpenCrossing['patch'] | undefined {
  const [x0, x1] = [Math.min(a[0], b[0]), Math.max(a[0], b[0])];
  const [y0, y1] = [Math.min(a[1], b[1]), Math.max(a[1], b[1])];
  if (x1 - x0 < LEAST_PATCH_MM || y1 - y0 < LEAST_PATCH_MM) return undefined;
  const outline = boxRing([x0, y0], [x1, y1]);
  const strips = card.plan?.strips ?? [];
  const crossed = crossingsOf(strips).find(({ at }) => insideRing(at, outline));
  return { outline, beneath: crossed ? laidFirst(strips, outline, crossed.nets) : [] };
}

const LEAST_PATCH_MM = 2;

/** Strips of the first laid of some nets that run through an outline. */
function laidFirst(strips: PlanStrip[], outline: Ring, nets: readonly string[]): Patch['beneath'] {
  const through = strips.filter(({ net, path }) => nets.includes(net) && runsThrough(path, outline));
  return through
    .filter(({ net }) => net === through[0].net)
    .map(({ id, width_mm, path }) => ({ id, width_mm, path }));
}

function boxRing([x0, y0]: Point, [x1, y1]: Point): Patch['outline'] {
  const at = (x: number, y: number): [number, number] => [round(x), round(y)];
  return [at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)];
}

const round = (mm: number) => Math.round(mm * 100) / 100;

/** Whether a path crosses an outline's sides or has a corner within. */
function runsThrough(path: PlanStrip['path'], outline: Ring): boolean {
  if (path.some((place) => insideRing(place, outline))) return true;
  const side = { id: '', net: 'a', width_mm: 1, on: 'base' };
  const rim = [...outline, outline[0]].map(([x, y]): [number, number] => [x, y]);
  return (
    crossingsOf([
      { ...side, path: rim },
      { ...side, net: 'b', path },
    ]).length > 0
  );
}
