import { components } from '../../copper/index.ts';
import type { PlanStrip } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Finding, Netlist } from '../../net/index.ts';
import type { Traced } from '../../trace/index.ts';
import type { Ribbon } from '../strip/ribbon.ts';
import { boxOf, distanceToRibbon, segmentsOf, walk } from '../strip/ribbon.ts';
import { pieceAt } from './copperAt.ts';
import type { Cover } from './standing.ts';
import type { StripStanding } from './types.ts';

const STEP_MM = 0.25;
/** A break longer than this is a strip not laid, not a gap. */
const LONGEST_GAP_MM = 6;
const NEAR_COVER_MM = 1;
const CROSSING_MM = 1;

/** A laid strip as it lies, with the piece under each place along it. */
interface Run {
  strip: PlanStrip;
  places: { at: Point; piece: number }[];
}

/** Where planned nets and built nets part: a laid strip in two pieces is a gap, one built net in two planned ones a bridge. */
export function netsAgainstPlan(
  strips: PlanStrip[],
  standings: StripStanding[],
  covers: Cover[],
  traced: Traced,
  netlist: Netlist,
  lamps: Ribbon[],
): Finding[] {
  const netOfPiece = new Map(
    netlist.nets.flatMap((net) => net.pieces.map((piece) => [piece, net.id] as const)),
  );
  const built = (piece: number) => netOfPiece.get(piece) ?? `piece ${piece}`;
  const runs = strips.flatMap((strip, k) => runOf(strip, standings[k], traced));
  const apart = withoutCrossings(strips, lamps, traced);
  const gaps = runs.flatMap((run) => gapsIn(run, othersThan(run.strip, strips), covers, built));
  return [...gaps, ...bridgesOver(runs, apart)];
}

function runOf(strip: PlanStrip, standing: StripStanding, traced: Traced): Run[] {
  if (standing.standing === 'to-lay' || standing.standing === 'unseen') return [];
  const [dx, dy] = standing.shiftMm;
  const places = walk(strip.path, STEP_MM).map(({ at }) => {
    const moved: Point = [at[0] + dx, at[1] + dy];
    return { at: moved, piece: pieceAt(traced, moved) };
  });
  return [{ strip, places }];
}

function othersThan({ net }: PlanStrip, strips: PlanStrip[]): Ribbon[] {
  return strips.filter((s) => s.net !== net).map(({ path, width_mm }) => ({ path, widthMm: width_mm }));
}

/**
 * Paper crossed between two pieces of different built nets along one strip. Where a strip of another net is planned to
 * cross, a patch lies between and hides what is beneath: nothing is told from there.
 */
function gapsIn(
  { strip, places }: Run,
  others: Ribbon[],
  covers: Cover[],
  built: (piece: number) => string,
): Finding[] {
  const found: Finding[] = [];
  let last = -1;
  let crossed = false;
  for (let k = 0; k < places.length; k++) {
    if (others.some((other) => distanceToRibbon(places[k].at, other) < CROSSING_MM)) {
      crossed = true;
      continue;
    }
    if (places[k].piece <= 0) continue;
    const before = places[last];
    const hidden = crossed;
    crossed = false;
    if (
      last >= 0 &&
      !hidden &&
      before.piece !== places[k].piece &&
      built(before.piece) !== built(places[k].piece)
    ) {
      const at: Point = [(before.at[0] + places[k].at[0]) / 2, (before.at[1] + places[k].at[1]) / 2];
      const sizeMm = Math.max(STEP_MM, (k - last - 1) * STEP_MM);
      const covered = covers.some(
        (c) => Math.hypot(c.at[0] - at[0], c.at[1] - at[1]) < c.radiusMm + NEAR_COVER_MM,
      );
      if (!covered && sizeMm <= LONGEST_GAP_MM) {
        found.push(
          finding('gap', at, sizeMm, 0.95, [built(before.piece), built(places[k].piece)], {
            strip: strip.id,
          }),
        );
      }
    }
    last = k;
  }
  return found;
}

/**
 * The sheet with the copper taken out where planned strips of two nets cross, for a patch parts them there, which a
 * mask of all copper cannot show; and under lamps, where none can be seen.
 */
function withoutCrossings(strips: PlanStrip[], lamps: Ribbon[], traced: Traced): Traced {
  const { width, height, pxPerMm, originMm } = traced;
  const ribbons = strips.map(({ path, width_mm, net }) => ({ path, widthMm: width_mm, net }));
  const on = Uint8Array.from(traced.labels, (label) => (label ? 1 : 0));
  for (const lamp of lamps) clearUnder(on, lamp, traced);
  let cut = lamps.length > 0;
  for (const [k, a] of ribbons.entries()) {
    for (const b of ribbons.slice(k + 1)) {
      if (a.net === b.net) continue;
      for (const [x, y] of commonPlaces(a, b, 1 / pxPerMm)) {
        clear(
          on,
          width,
          height,
          (x - originMm[0]) * pxPerMm,
          (y - originMm[1]) * pxPerMm,
          CROSSING_MM * pxPerMm,
        );
        cut = true;
      }
    }
  }
  return cut ? { ...traced, labels: components(on, width, height, 4).labels } : traced;
}

/** Places that lie on both ribbons, looked for only where a straight piece of the one comes near one of the other. */
function commonPlaces(a: Ribbon, b: Ribbon, step: number): Point[] {
  const places: Point[] = [];
  for (const one of segmentsOf(a.path)) {
    for (const other of segmentsOf(b.path)) {
      const [p, q] = [boxOf(one, a.widthMm / 2), boxOf(other, b.widthMm / 2)];
      const [x1, y1] = [Math.min(p.x1, q.x1), Math.min(p.y1, q.y1)];
      for (let y = Math.max(p.y0, q.y0); y < y1; y += step) {
        for (let x = Math.max(p.x0, q.x0); x < x1; x += step) {
          if (distanceToRibbon([x, y], a) === 0 && distanceToRibbon([x, y], b) === 0) places.push([x, y]);
        }
      }
    }
  }
  return places;
}

function clearUnder(on: Uint8Array, ribbon: Ribbon, { width, height, pxPerMm, originMm }: Traced): void {
  const box = boxOf(ribbon.path, ribbon.widthMm);
  for (let y = box.y0; y < box.y1; y += 1 / pxPerMm) {
    for (let x = box.x0; x < box.x1; x += 1 / pxPerMm) {
      if (distanceToRibbon([x, y], ribbon) > 0) continue;
      const i = Math.floor((x - originMm[0]) * pxPerMm);
      const j = Math.floor((y - originMm[1]) * pxPerMm);
      if (i >= 0 && j >= 0 && i < width && j < height) on[j * width + i] = 0;
    }
  }
}

function clear(on: Uint8Array, width: number, height: number, x: number, y: number, reach: number): void {
  const x1 = Math.min(width - 1, Math.round(x + reach));
  for (let j = Math.max(0, Math.round(y - reach)); j <= Math.min(height - 1, Math.round(y + reach)); j++) {
    for (let i = Math.max(0, Math.round(x - reach)); i <= x1; i++) on[j * width + i] = 0;
  }
}

/** Pieces that hold laid strips of two planned nets, placed where the copper leaves both. */
function bridgesOver(allRuns: Run[], traced: Traced): Finding[] {
  const built = (piece: number) => `piece ${piece}`;
  const runs = allRuns.map(({ strip, places }) => ({
    strip,
    places: places.map(({ at }) => ({ at, piece: pieceAt(traced, at) })),
  }));
  const holders = new Map<string, Map<string, Run[]>>();
  for (const run of runs) {
    for (const net of netsUnder(run, built)) {
      const planned = holders.get(net) ?? new Map<string, Run[]>();
      holders.set(net, planned.set(run.strip.net, [...(planned.get(run.strip.net) ?? []), run]));
    }
  }
  return [...holders].flatMap(([net, planned]) => {
    const names = [...planned.keys()];
    return names.slice(1).flatMap((name) => {
      const at = meetingPlace(planned.get(names[0])!, planned.get(name)!, traced, net, built);
      return at
        ? [finding('bridge', at.at, at.widthMm, 0.95, [names[0], name], { between: `${names[0]}, ${name}` })]
        : [];
    });
  });
}

/** Built nets that carry at least a fifth of a run. */
function netsUnder({ places }: Run, built: (piece: number) => string): string[] {
  const share = new Map<string, number>();
  for (const { piece } of places) if (piece > 0) share.set(built(piece), (share.get(built(piece)) ?? 0) + 1);
  return [...share].filter(([, n]) => n >= places.length / 5).map(([net]) => net);
}

/** Copper of the net, off both planned sides, from which the way to the two is together least. */
function meetingPlace(a: Run[], b: Run[], traced: Traced, net: string, built: (piece: number) => string) {
  const ribbon = ({ strip, places }: Run) => ({ path: shiftedPath(strip, places), widthMm: strip.width_mm });
  const [ra, rb] = [a.map(ribbon), b.map(ribbon)];
  const { width, height, pxPerMm, originMm, labels } = traced;
  const every = Math.max(1, Math.round(pxPerMm / 4));
  let best: { at: Point; way: number } | undefined;
  for (let j = 0; j < height; j += every) {
    for (let i = 0; i < width; i += every) {
      const piece = labels[j * width + i];
      if (!piece || built(piece) !== net) continue;
      const at: Point = [originMm[0] + (i + 0.5) / pxPerMm, originMm[1] + (j + 0.5) / pxPerMm];
      const da = Math.min(...ra.map((r) => distanceToRibbon(at, r)));
      if (best && da >= best.way) continue;
      const db = Math.min(...rb.map((r) => distanceToRibbon(at, r)));
      // A place within one strip would tie with every other on the shortest way across: ask for copper between the two.
      const way = da + db + 0.5 * Math.abs(da - db);
      if (!best || way < best.way) best = { at, way };
    }
  }
  return best && { at: best.at, widthMm: best.way };
}

/** The planned path moved as its places were. */
function shiftedPath(strip: PlanStrip, places: Run['places']): Point[] {
  const first = walk(strip.path, STEP_MM)[0].at;
  const [dx, dy] = [places[0].at[0] - first[0], places[0].at[1] - first[1]];
  return strip.path.map(([x, y]) => [x + dx, y + dy]);
}

function finding(
  kind: 'gap' | 'bridge',
  at: Point,
  sizeMm: number,
  certainty: number,
  nets: string[],
  facts: Finding['facts'],
): Finding {
  return {
    kind,
    at,
    sizeMm,
    certainty,
    weight: 'holds',
    lamps: [],
    nets,
    sheet: 'base',
    facts: { ...facts, byPlan: true },
  };
}
