import type { Point } from '../../src/geometry/index.ts';
import type { Build, BuiltStrip } from './build.ts';
import { cardOf, rectangle } from './harbourNight.ts';

/** A way to spoil a sound build: gives a new build with the fault planted and told. */
export type Fault = (build: Build) => Build;

/** Applies faults one after another; the card's taps follow what lies on the sheet, its plan stays. */
export function spoil(build: Build, faults: Fault[]): Build {
  const spoilt = faults.reduce((b, fault) => fault(b), build);
  const planned = build.strips.map((strip) => {
    const [dx, dy] = spoilt.planMoves?.[strip.id] ?? [0, 0];
    return { ...strip, path: strip.path.map(([x, y]): Point => [x + dx, y + dy]) };
  });
  return { ...spoilt, card: cardOf(spoilt, planned) };
}

/** The strip is interrupted at this place. */
export function gap(stripId: string, at: Point, widthMm: number, skew = 0): Fault {
  return (b) => {
    const strip = b.strips.find((s) => s.id === stripId);
    if (!strip) throw new Error(`No strip ${stripId}`);
    const cuts = [...strip.cuts, { at, widthMm, skew }];
    return told(withStrip(b, { ...strip, cuts }), { kind: 'gap', at, sizeMm: widthMm, nets: [strip.net] });
  };
}

/** A scrap of tape joins two strips that must stay apart. */
export function bridge(from: Point, to: Point, widthMm: number, nets: string[]): Fault {
  return (b) => {
    const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const slivers = [...b.slivers, { ring: band(from, to, widthMm) }];
    return told({ ...b, slivers }, { kind: 'bridge', at: middle, sizeMm: widthMm, nets });
  };
}

/** A scrap of tape leaves less than the clearance between two strips. */
export function tight(from: Point, to: Point, widthMm: number, leftMm: number, at: Point): Fault {
  return (b) => {
    const slivers = [...b.slivers, { ring: band(from, to, widthMm) }];
    return told({ ...b, slivers }, { kind: 'tight', at, sizeMm: leftMm });
  };
}

/** The strip is torn from both sides. */
export function neck(stripId: string, at: Point, widthMm: number): Fault {
  return (b) => {
    const strip = b.strips.find((s) => s.id === stripId);
    if (!strip) throw new Error(`No strip ${stripId}`);
    const necks = [...strip.necks, { at, widthMm, lengthMm: 1.6 }];
    return told(withStrip(b, { ...strip, necks }), { kind: 'narrow-neck', at, sizeMm: widthMm });
  };
}

/** The lamp lies the other way round. */
export function reversed(lampId: string): Fault {
  return (b) => {
    const lamps = b.lamps.map((l) =>
      l.id === lampId ? { ...l, axis: [-l.axis[0], -l.axis[1]] as Point } : l,
    );
    const at = b.lamps.find((l) => l.id === lampId)?.at ?? [0, 0];
    return told({ ...b, lamps }, { kind: 'reversed-lamp', at, lamp: lampId });
  };
}

/** The lamp has come away: it lies beside its strips by this much. */
export function lifted(lampId: string, by: Point): Fault {
  return (b) => {
    const lamps = b.lamps.map((l) =>
      l.id === lampId ? { ...l, at: [l.at[0] + by[0], l.at[1] + by[1]] as Point } : l,
    );
    const at = lamps.find((l) => l.id === lampId)?.at ?? [0, 0];
    return told({ ...b, lamps }, { kind: 'lamp-off-strip', at, lamp: lampId });
  };
}

/** Copper of the plus net runs under the cell, whose lower face is minus. */
export function rimShort(): Fault {
  return (b) => {
    const ring = rectangle(7, 126.5, 19.5, 129);
    return told({ ...b, slivers: [...b.slivers, { ring }] }, { kind: 'shorted-cell', at: [18, 127.75] });
  };
}

/** A strip is not laid yet. */
export function notLaid(stripId: string): Fault {
  return (b) => {
    const strip = b.strips.find((s) => s.id === stripId);
    if (!strip) throw new Error(`No strip ${stripId}`);
    const [from, to] = strip.path;
    const at: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    return told(withStrip(b, { ...strip, absent: true }), { kind: 'missing-strip', at, nets: [strip.net] });
  };
}

/** A piece of tape that the plan does not have, on bare paper. */
export function extraTape(from: Point, to: Point, widthMm: number): Fault {
  return (b) => {
    const at: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const slivers = [...b.slivers, { ring: band(from, to, widthMm) }];
    return told(
      { ...b, slivers },
      { kind: 'extra-strip', at, sizeMm: Math.hypot(to[0] - from[0], to[1] - from[1]) },
    );
  };
}

/** The plan has the strip elsewhere by this much: as built it lies beside its place. */
export function planMoved(stripId: string, by: Point): Fault {
  return (b) => {
    const strip = b.strips.find((s) => s.id === stripId);
    if (!strip) throw new Error(`No strip ${stripId}`);
    const [from, to] = [strip.path[0], strip.path[strip.path.length - 1]];
    const at: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const planMoves = { ...b.planMoves, [stripId]: by };
    return told({ ...b, planMoves }, { kind: 'shifted-strip', at, sizeMm: Math.hypot(...by) });
  };
}

/** The cell already sits in its nest. */
export function withCell(): Fault {
  return (b) => ({ ...b, cell: { ...b.cell, present: true } });
}

function told(build: Build, planted: Build['planted'][number]): Build {
  return { ...build, planted: [...build.planted, planted] };
}

function withStrip(build: Build, strip: BuiltStrip): Build {
  return { ...build, strips: build.strips.map((s) => (s.id === strip.id ? strip : s)) };
}

/** A rectangle of this width round the segment. */
function band(from: Point, to: Point, widthMm: number): Point[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const nx = ((from[1] - to[1]) / length) * (widthMm / 2);
  const ny = ((to[0] - from[0]) / length) * (widthMm / 2);
  return [
    [from[0] + nx, from[1] + ny],
    [to[0] + nx, to[1] + ny],
    [to[0] - nx, to[1] - ny],
    [from[0] - nx, from[1] - ny],
  ];
}
