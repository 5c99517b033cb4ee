import type { Card, PlanStrip } from '../../card/index.ts';
import { cutList } from '../../plan/print/cutList.ts';
import { area, length as inUnit } from '../../words/lengths.ts';
import { recordWords as words } from '../../words/record.ts';
import type { Recordable } from '../types.ts';
import type { Block } from './types.ts';

/** Copper as it lies, piece by piece, and what to cut for the plan's strips where there is a plan. */
export function stripTables(checked: Recordable, card: Card): Block[] {
  return [
    { kind: 'heading', level: 2, text: words.sections.cuts },
    builtTable(checked),
    ...(card.plan && card.plan.strips.length > 0 ? plannedBlocks(card, card.plan.strips) : []),
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

/** What to cut to make the card again, in the order of laying. */
function plannedBlocks(card: Card, strips: PlanStrip[]): Block[] {
  const widest = Math.max(...strips.map(({ width_mm }) => width_mm));
  const { lines } = cutList(card, widest);
  const rows = lines.map(({ id, widthMm, lengthMm, folds, joins, cutMm }, k) => [
    id,
    strips[k].net,
    inUnit(widthMm),
    inUnit(lengthMm, 0),
    String(folds),
    String(joins),
    inUnit(cutMm, 0),
  ]);
  const total = lines.reduce((sum, { cutMm }) => sum + cutMm, 0);
  const numeric = [false, false, true, true, true, true, true];
  return [
    { kind: 'table', caption: words.strips.planned, head: [...words.strips.plannedHead], rows, numeric },
    { kind: 'para', text: words.strips.total(inUnit(total, 0)), small: true },
  ];
}
