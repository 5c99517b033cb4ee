import { Graph, layout } from '@dagrejs/dagre';
import type { DiagramPart } from './parts.ts';

export const columnMm = 22;
export const partMm = 15;
const busMm = 5;
const resistorMm = 9;

/** A net as a level line, and a part as an upright between two of them. */
export interface Placed {
  buses: { net: string; y: number; x0: number; x1: number }[];
  parts: { part: DiagramPart; x: number; top: number; bottom: number; middle: number }[];
}

/**
 * Ranks nets and parts from the cell's plus at the top to its minus at the bottom by layered drawing, then stands each part
 * in a column of its own height range, so that every connection is one straight line.
 * @source layering and ordering: Gansner, Koutsofios, North, Vo, "A technique for drawing directed graphs", 1993, as dagre does it
 */
export function placeDiagram(parts: readonly DiagramPart[]): Placed {
  const graph = new Graph();
  graph.setGraph({ rankdir: 'TB', nodesep: 2, ranksep: 3 });
  graph.setDefaultEdgeLabel(() => ({}));
  for (const net of new Set(parts.flatMap(({ upper, lower }) => [upper, lower])))
    graph.setNode(`net ${net}`, { width: 4, height: busMm });
  for (const { id, upper, lower, seriesOhm } of parts) {
    graph.setNode(`part ${id}`, { width: columnMm - 2, height: partMm + (seriesOhm > 0 ? resistorMm : 0) });
    graph.setEdge(`net ${upper}`, `part ${id}`);
    graph.setEdge(`part ${id}`, `net ${lower}`);
  }
  layout(graph);
  const heights = new Map(
    graph
      .nodes()
      .filter((name) => name.startsWith('net '))
      .map((name) => [name.slice(4), Number(graph.node(name).y)]),
  );
  const wish = new Map(parts.map(({ id }) => [id, Number(graph.node(`part ${id}`).x)]));
  return setApart(parts, heights, wish);
}

const laneMm = 1.8;

/** Stands the parts up; where two nets' lines would run into one another, the second and all below it move down a lane. */
function setApart(
  parts: readonly DiagramPart[],
  levels: Map<string, number>,
  wish: Map<string, number>,
): Placed {
  for (;;) {
    const stood = inColumns(parts.map((part) => upright(part, levels, wish.get(part.id) ?? 0)));
    const buses = busesOf(stood, levels);
    const second = firstMeeting(buses);
    if (!second) return { buses, parts: stood };
    for (const { net, y } of buses)
      if (net === second.net || y > second.y + 0.01) levels.set(net, y + laneMm);
  }
}

function upright(part: DiagramPart, levels: Map<string, number>, x: number): Placed['parts'][number] {
  const [from, to] = [levels.get(part.upper) ?? 0, levels.get(part.lower) ?? 0];
  const [top, bottom] = [Math.min(from, to), Math.max(from, to)];
  return { part, x, top, bottom, middle: (top + bottom) / 2 };
}

function firstMeeting(buses: Placed['buses']): Placed['buses'][number] | undefined {
  return buses.find((b, i) =>
    buses.slice(0, i).some((a) => Math.abs(a.y - b.y) < laneMm / 2 && a.x0 <= b.x1 && b.x0 <= a.x1),
  );
}

/** From left to right by the layout's wish; parts share a column only where their heights do not meet. */
function inColumns(spans: Placed['parts']): Placed['parts'] {
  const columns: Placed['parts'][] = [];
  for (const span of [...spans].sort((p, q) => p.x - q.x || p.top - q.top)) {
    const last = columns.at(-1);
    const free = last?.every(
      ({ top, bottom, x }) =>
        (span.top >= bottom - 0.1 || span.bottom <= top + 0.1) && Math.abs(x - span.x) < columnMm,
    );
    if (last && free) last.push(span);
    else columns.push([span]);
  }
  return columns.flatMap((column, i) => column.map((span) => ({ ...span, x: i * columnMm })));
}

function busesOf(parts: Placed['parts'], levels: Map<string, number>): Placed['buses'] {
  return [...levels].map(([net, y]) => {
    const xs = parts.filter(({ part }) => part.upper === net || part.lower === net).map(({ x }) => x);
    return { net, y, x0: Math.min(...xs), x1: Math.max(...xs) };
  });
}
