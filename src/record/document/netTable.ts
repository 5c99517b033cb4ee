import { area } from '../../words/lengths.ts';
import { recordWords as words } from '../../words/record.ts';
import type { Recordable } from '../types.ts';
import type { Block } from './types.ts';

/** Nets with their pieces, pads and copper. */
export function netTable({ netlist }: Recordable): Block[] {
  return [
    { kind: 'heading', level: 2, text: words.sections.nets },
    {
      kind: 'table',
      caption: words.nets.caption,
      head: [...words.nets.head],
      numeric: [false, false, false, true],
      rows: netlist.nets.map((net) => [
        net.id,
        net.pieces.join(', '),
        net.pads.map((pad) => pad.replace(/^cell(?=[+-]$)/, words.parts.cellName)).join(', '),
        area(net.areaMm2),
      ]),
    },
  ];
}
