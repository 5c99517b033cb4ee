import { Graph, layout } from '@dagrejs/dagre';
import type { DiagramPart } from './parts.ts';

export const columnMm = 20;
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
  const levels = apart(heights, parts);
  const level = (net: string) => levels.get(net) ?? 0;
  const spans = parts.map((part) => {
    const { x, y } = graph.node(`part ${part.id}`);
    const ends = [level(part.upper), level(part.lower)];
    return { part, x: Number(x), middle: Number(y), top: Math.min(...ends), bottom: Math.max(...ends) };
  });
  const placed = inColumns(spans);
  return { buses: busesOf(placed, levels), parts: placed };
}

/** Two nets at one height whose lines might meet are set apart. */
function apart(heights: Map<string, number>, parts: readonly DiagramPart[]): Map<string, number> {
  const degree = (net: string) => parts.filter(({ upper, lower }) => upper === net || lower === net).length;
  const levels = new Map<string, number>();
  const taken: number[] = [];
  const widest = [...heights].sort(([p, y], [q, z]) => y - z || degree(q) - degree(p));
  for (const [net, wish] of widest) {
    let y = wish;
    // Lines with one connection are points and cannot run into another.
    if (degree(net) > 2) while (taken.some((other) => Math.abs(other - y) < 1.5)) y += 1.6;
    if (degree(net) > 2) taken.push(y);
    levels.set(net, y);
  }
  return levels;
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
