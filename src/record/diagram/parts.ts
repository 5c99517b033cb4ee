import { benchWords } from '../../words/bench.ts';
import type { Card } from '../../card/index.ts';
import type { Netlist } from '../../net/index.ts';

/** A part between two nets: current is meant to run from the upper to the lower. */
export interface DiagramPart {
  id: string;
  kind: 'lamp' | 'cell' | 'press' | 'stroke';
  label: string;
  note: string;
  upper: string;
  lower: string;
  seriesOhm: number;
}

/** A pad on no copper hangs on a net of its own, told by this mark. */
export const looseMark = 'open:';

/** Every part of a card with the nets it lies between; a contact of several sides is several parts. */
export function diagramParts(card: Card, { netOf }: Netlist): DiagramPart[] {
  const net = (pad: string) => netOf[pad] ?? `${looseMark}${pad}`;
  const lamps = card.lamps.map((lamp): DiagramPart => ({
    id: lamp.id,
    kind: 'lamp',
    label: lamp.id,
    note: benchWords.parts.colours[lamp.colour],
    upper: net(`${lamp.id}+`),
    lower: net(`${lamp.id}-`),
    seriesOhm: lamp.series_ohm,
  }));
  const cell: DiagramPart[] = card.cell
    ? [
        {
          id: 'cell',
          kind: 'cell',
          label: card.cell.kind,
          note: '',
          upper: net('cell+'),
          lower: net('cell-'),
          seriesOhm: 0,
        },
      ]
    : [];
  const contacts = card.contacts.flatMap((contact) => contactParts(contact, netOf));
  return [...cell, ...lamps, ...contacts];
}

function contactParts({ id, how }: Card['contacts'][number], netOf: Record<string, string>): DiagramPart[] {
  const sides = [...'abcdefghijklmnopqrstuvwxyz'].flatMap((letter) => netOf[`${id}${letter}`] ?? []);
  const nets = [...new Set(sides)];
  const first = nets[0];
  if (!first) return [];
  return nets.slice(1).map((other, i) => {
    // The side of the cell's minus is drawn below, the side of its plus above.
    const down = first === netOf['cell-'] || other === netOf['cell+'];
    const [upper, lower] = down ? [other, first] : [first, other];
    return {
      id: i === 0 ? id : `${id}.${i + 1}`,
      kind: how,
      label: id,
      note: '',
      upper,
      lower,
      seriesOhm: 0,
    };
  });
}
