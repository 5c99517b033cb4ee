import type { Card, PlanStrip } from '../../card/index.ts';
import { area, length as inUnit } from '../../words/lengths.ts';
import { recordWords as words } from '../../words/record.ts';
import type { Recordable } from '../types.ts';
import type { Block } from './types.ts';

/** Copper as it lies, piece by piece, and the plan's strips where there is a plan. */
export function stripTables(checked: Recordable, card: Card): Block[] {
  return [
    { kind: 'heading', level: 2, text: words.sections.cuts },
    builtTable(checked),
    ...(card.plan && card.plan.strips.length > 0 ? plannedBlocks(card.plan.strips) : []),
  ];
}

function builtTable({ traced, netlist }: Recordable): Block {
  const rows = traced.pieces.map(({ id, widthMm, areaMm2, lines }) => {
    const net = netlist.nets.find(({ pieces }) => pieces.includes(id))?.id ?? '';
    const length = lines.reduce((sum, { lengthMm }) => sum + lengthMm, 0);
    return [String(id), net, inUnit(widthMm), inUnit(length, 0), area(areaMm2)];
  });
  const numeric = [false, false, true, true, true];
  return { kind: 'table', caption: words.strips.caption, head: [...words.strips.head], rows, numeric };
}

function plannedBlocks(strips: PlanStrip[]): Block[] {
  const rows = strips.map((strip) => [
    strip.id,
    strip.net,
    inUnit(strip.width_mm),
    inUnit(pathLength(strip.path), 0),
  ]);
  const total = strips.reduce((sum, { path }) => sum + pathLength(path), 0);
  const numeric = [false, false, true, true];
  return [
    { kind: 'table', caption: words.strips.planned, head: [...words.strips.plannedHead], rows, numeric },
    { kind: 'para', text: words.strips.total(inUnit(total, 0)), small: true },
  ];
}

function pathLength(path: PlanStrip['path']): number {
  return path.slice(1).reduce((sum, [x, y], i) => {
    const [px, py] = path[i] as [number, number];
    return sum + Math.hypot(x - px, y - py);
  }, 0);
}
