import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { cellDiameterMm, contactPlace, sidesOf } from '../../parts/index.ts';
import { toScreen, type View } from '../surface/view.ts';

interface Props {
  card: Card;
  view: View;
  part: string | undefined;
  plus: Point | undefined;
}

/** The parts drawn on the sheet: lamps with + and −, the cell's rim, contacts. */
export function PartMarks({ card, view, part, plus }: Props) {
  return (
    <g className="part-marks">
      {card.cell && <CellMark cell={card.cell} view={view} here={part === 'cell'} />}
      {card.contacts.map((contact) => (
        <ContactMark key={contact.id} contact={contact} view={view} here={part === contact.id} />
      ))}
      {card.lamps.map((lamp) => (
        <LampMark key={lamp.id} lamp={lamp} view={view} here={part === lamp.id} />
      ))}
      {plus && <Pad at={toScreen(view, plus)} sign="+" />}
    </g>
  );
}

function LampMark({ lamp, view, here }: { lamp: Card['lamps'][number]; view: View; here: boolean }) {
  const a = toScreen(view, lamp.plus);
  const b = toScreen(view, lamp.minus);
  const line = `M${a.join(' ')}L${b.join(' ')}`;
  const [x, y] = beyond(b, a, 20);
  return (
    <g className={here ? 'part here' : 'part'}>
      <path className="under" d={line} />
      <path className="over" d={line} />
      <Pad at={a} sign="+" />
      <Pad at={b} sign="−" />
      <text className="part-name" x={x} y={y + 4} textAnchor="middle">
        {lamp.id}
      </text>
    </g>
  );
}

/** A place farther along the way from a to b, px beyond b: the name stands past the + end. */
function beyond(a: Point, b: Point, px: number): Point {
  const far = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
  return [b[0] + ((b[0] - a[0]) / far) * px, b[1] + ((b[1] - a[1]) / far) * px];
}

function Pad({ at: [x, y], sign }: { at: Point; sign: '+' | '−' }) {
  return (
    <g className="pad" transform={`translate(${x} ${y})`}>
      <circle r={7.5} />
      <path d={sign === '+' ? 'M-4 0H4M0-4V4' : 'M-4 0H4'} />
    </g>
  );
}

function CellMark({ cell, view, here }: { cell: NonNullable<Card['cell']>; view: View; here: boolean }) {
  const [x, y] = toScreen(view, cell.at);
  const r = (cellDiameterMm[cell.kind] / 2) * view.scale;
  return (
    <g className={here ? 'part here' : 'part'} transform={`translate(${x} ${y})`}>
      <circle className="under" r={r} />
      <circle className="over" r={r} />
      <text className="part-name" textAnchor="middle" y={5}>
        {cell.up === '+' ? '+' : '−'} {cell.kind}
      </text>
    </g>
  );
}

function ContactMark({
  contact,
  view,
  here,
}: {
  contact: Card['contacts'][number];
  view: View;
  here: boolean;
}) {
  const [x, y] = toScreen(view, contactPlace(contact));
  const sides = sidesOf(contact)?.map((side) => toScreen(view, side));
  const line = sides ? `M${sides[0].join(' ')}L${sides[1].join(' ')}` : '';
  return (
    <g className={here ? 'part here' : 'part'}>
      {line && <path className="under" d={line} />}
      {line && <path className="over" d={line} />}
      {!sides && here && <circle className="reach" cx={x} cy={y} r={contact.reach_mm * view.scale} />}
      <g className="contact" transform={`translate(${x} ${y}) rotate(45)`}>
        <rect x={-6} y={-6} width={12} height={12} />
      </g>
      <text className="part-name" x={x} y={y + 21} textAnchor="middle">
        {contact.id}
      </text>
    </g>
  );
}
