import { useRef, type PointerEvent } from 'react';
import type { Card, Flap } from '../../card/schema.ts';
import type { Point, Ring } from '../../geometry/index.ts';
import { contactPlace, flapOver, type FlapMeeting } from '../../parts/index.ts';
import type { Piece, Traced } from '../../trace/index.ts';
import { foldWords } from '../../words/fold.ts';
import { angleAt, offFold, turnedAbout } from './closing.ts';

interface Props {
  card: Card;
  traced: Traced;
  flap: Flap;
  degrees: number;
  turn(degrees: number): void;
  meetings: FlapMeeting[];
}

/** From here on the flap lies near enough on the base to show where it lands. */
const nearlyClosed = 170;

/** Base and flap as glass, in mm of the base; a drag across the fold turns the flap. */
export function FoldPicture({ card, traced, flap, degrees, turn, meetings }: Props) {
  const svg = useRef<SVGSVGElement>(null);
  const grip = useRef<number>(undefined);
  const { width, height } = traced.baseMm;
  const all: Point[] = [[0, 0], [width, height], ...flap.outline];
  const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
  const [x0, y0] = [Math.min(...xs) - 2, Math.min(...ys) - 2];
  const size = [Math.max(...xs) + 2 - x0, Math.max(...ys) + 2 - y0];
  const place = ({ clientX, clientY }: PointerEvent): Point => {
    const seen = svg.current!.getScreenCTM()!.inverse();
    const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(seen);
    return [x, y];
  };
  const take = (event: PointerEvent) => {
    const cos = Math.cos((degrees * Math.PI) / 180);
    const off = offFold(flap, place(event));
    // Edge-on the flap is a line: any place is then taken for its far edge.
    grip.current = Math.abs(cos) < 0.1 ? farthest(flap) : off / cos;
    if (grip.current < 2) grip.current = farthest(flap);
    svg.current?.setPointerCapture(event.pointerId);
  };
  const drag = (event: PointerEvent) => {
    if (grip.current !== undefined) turn(angleAt(grip.current, offFold(flap, place(event))));
  };
  const drop = () => (grip.current = undefined);
  const onFlap = (piece: Piece) => piece.outline.outer.some((p) => flapOver(flap, p));
  const clip = `flap-${flap.id.replace(/\W/g, '')}`;
  const marks = degrees >= nearlyClosed;
  return (
    <svg
      ref={svg}
      className="fold-picture"
      viewBox={`${x0} ${y0} ${size[0]} ${size[1]}`}
      role="img"
      aria-label={foldWords.closing.picture(flap.id)}
      onPointerDown={take}
      onPointerMove={drag}
      onPointerUp={drop}
      onPointerCancel={drop}
    >
      <clipPath id={clip}>
        <path d={ringPath(flap.outline)} />
      </clipPath>
      <clipPath id={`${clip}-base`}>
        <rect width={width} height={height} />
      </clipPath>
      <rect className="glass base" width={width} height={height} />
      <g className="strips base" clipPath={`url(#${clip}-base)`}>
        {traced.pieces.map((piece) => (
          <path key={piece.id} d={piecePath(piece)} fillRule="evenodd" />
        ))}
      </g>
      <g transform={turnedAbout(flap, degrees)} className="turning">
        <path className="glass flap" d={ringPath(flap.outline)} />
        <g className="strips flap" clipPath={`url(#${clip})`}>
          {traced.pieces.filter(onFlap).map((piece) => (
            <path key={piece.id} d={piecePath(piece)} fillRule="evenodd" />
          ))}
        </g>
      </g>
      <path className="fold-line" d={`M${flap.fold[0].join(' ')}L${flap.fold[1].join(' ')}`} />
      {marks && <LandingMarks card={card} meetings={meetings} />}
    </svg>
  );
}

/** A ring where a contact's sides are all met, a cross where one is missed. */
function LandingMarks({ card, meetings }: Pick<Props, 'card' | 'meetings'>) {
  const contacts = card.contacts.filter(({ id }) => meetings.some(({ contact }) => contact === id));
  return contacts.map((contact) => {
    const [x, y] = contactPlace(contact);
    const missed = meetings.some((each) => each.contact === contact.id && each.missMm > 0);
    return (
      <g
        key={contact.id}
        className={missed ? 'landing missed' : 'landing'}
        transform={`translate(${x} ${y})`}
      >
        {missed ? <path d="M-3-3L3 3M3-3L-3 3" /> : <circle r={3.4} />}
        <text x={4.6} y={1.4}>
          {contact.id}
        </text>
      </g>
    );
  });
}

function farthest(flap: Flap): number {
  return Math.max(...flap.outline.map((p) => offFold(flap, p)));
}

function piecePath({ outline }: Piece): string {
  return [outline.outer, ...outline.holes].map(ringPath).join('');
}

function ringPath(ring: Ring): string {
  return `M${ring.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}Z`;
}
