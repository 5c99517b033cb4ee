import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Netlist } from '../../net/index.ts';
import { recordWords as words } from '../../words/record.ts';
import type { Drawing, Shape } from '../drawing/types.ts';
import { diagramParts, looseMark, type DiagramPart } from './parts.ts';
import { placeDiagram, type Placed } from './place.ts';
import { cellSymbol, contactSymbol, ledSymbol, lines, resistorSymbol, symbolMm } from './symbols.ts';

const resistorShiftMm = 4.5;

/** The circuit as a diagram in standard symbols; undefined for a card without parts. */
export function diagram(card: Card, netlist: Netlist): Drawing | undefined {
  const parts = diagramParts(card, netlist);
  if (parts.length === 0) return undefined;
  const placed = placeDiagram(parts);
  const ys = placed.buses.map(({ y }) => y);
  const xs = placed.parts.map(({ x }) => x);
  return {
    title: words.figure.diagram,
    box: {
      x0: Math.min(...xs) - 12,
      y0: Math.min(...ys) - 6,
      x1: Math.max(...xs) + 21,
      y1: Math.max(...ys) + 6,
    },
    shapes: [
      ...placed.buses.flatMap((bus) => busShapes(bus, placed)),
      ...placed.parts.flatMap((one) => partShapes(one, placed)),
    ],
  };
}

function busShapes({ net, y, x0, x1 }: Placed['buses'][number], { parts }: Placed): Shape[] {
  const touching = parts.filter(({ part }) => part.upper === net || part.lower === net);
  if (net.startsWith(looseMark))
    return [{ kind: 'circle', at: [x0, y], radius: 0.9, fill: 'paper', stroke: 'graphite', width: 0.3 }];
  const inner = touching.filter(({ x }) => x > x0 && x < x1);
  return [
    lines([
      [x0, y],
      [x1, y],
    ]),
    // A dot where three lines meet; two that meet at a corner need none.
    ...inner.map(({ x }): Shape => ({ kind: 'circle', at: [x, y], radius: 0.65, fill: 'graphite' })),
    netName(net, x0, x1, y),
  ];
}

/** A long line is named at its left end, a short one beside it, where the column has room. */
function netName(net: string, x0: number, x1: number, y: number): Shape {
  const at: Point = x1 > x0 ? [x0 - 1.2, y - 0.9] : [x0 + 1.2, y + 0.8];
  return { kind: 'text', at, text: net, size: 2.4, anchor: x1 > x0 ? 'end' : 'start', ink: 'grey' };
}

function partShapes({ part, x, top, bottom }: Placed['parts'][number], { buses }: Placed): Shape[] {
  const level = (net: string) => buses.find((bus) => bus.net === net)?.y ?? 0;
  const [from, to] = [level(part.upper), level(part.lower)];
  const turn = from <= to ? 1 : -1;
  const middle: Point = [x, (top + bottom) / 2 + (part.seriesOhm > 0 ? turn * resistorShiftMm : 0)];
  const half = symbolMm / 2;
  const label: Point = [x + 5.2, middle[1] + 0.2];
  return [
    lines(
      [
        [x, from],
        [x, middle[1] - turn * half],
      ],
      [
        [x, middle[1] + turn * half],
        [x, to],
      ],
    ),
    ...(part.seriesOhm > 0
      ? resistorShapes([x, middle[1] - turn * 2 * resistorShiftMm], part.seriesOhm)
      : []),
    ...symbolOf(part, middle, turn),
    { kind: 'text', at: label, text: part.label, size: 2.8, bold: true },
    ...(part.note
      ? [{ kind: 'text', at: [label[0], label[1] + 3], text: part.note, size: 2.2, ink: 'grey' } as const]
      : []),
  ];
}

function symbolOf(part: DiagramPart, middle: Point, turn: 1 | -1): Shape[] {
  if (part.kind === 'lamp') return ledSymbol(middle, turn);
  if (part.kind === 'cell') return cellSymbol(middle, turn);
  return contactSymbol(middle, part.kind);
}

function resistorShapes([x, y]: Point, ohm: number): Shape[] {
  return [
    ...resistorSymbol([x, y]),
    { kind: 'text', at: [x + 2, y + 0.8], text: words.redrawn.ohm(ohm), size: 2.4 },
  ];
}
