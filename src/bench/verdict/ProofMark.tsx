import type { Point } from '../../geometry/index.ts';
import type { Weight } from '../../net/index.ts';
import { markRadius, type LaidMark } from './layMarks.ts';

/** A number in its circle. Filled holds, ringed asks for a check, dashed is a note: the shape tells it without colour. */
export function Disc({ number, weight, settled }: { number: number; weight: Weight; settled: boolean }) {
  return (
    <g className={`disc ${settled ? 'settled' : weight}`}>
      <circle r={markRadius} />
      <text textAnchor="middle" y={4.5}>
        {number}
      </text>
      {settled && <path d="M-13 9L13-9" />}
    </g>
  );
}

/** A proof mark with its leader line, or its number at the place where the margin is full. */
export function ProofMark({ mark, here }: { mark: LaidMark; here: boolean }) {
  const { at, label, number, finding } = mark;
  const [x, y] = label ?? at;
  return (
    <g className={here ? 'proof-mark here' : 'proof-mark'}>
      {label && <Leader at={at} label={label} ring={here ? 13 : 7} />}
      <g transform={`translate(${x} ${y}) scale(${label || here ? 1 : 0.7})`}>
        <Disc number={number} weight={finding.weight} settled={finding.checked !== undefined} />
      </g>
    </g>
  );
}

function Leader({ at, label, ring }: { at: Point; label: Point; ring: number }) {
  const far = Math.hypot(at[0] - label[0], at[1] - label[1]) || 1;
  const [ux, uy] = [(at[0] - label[0]) / far, (at[1] - label[1]) / far];
  const from = `${label[0] + ux * markRadius} ${label[1] + uy * markRadius}`;
  const line = `M${from}L${at[0] - ux * ring} ${at[1] - uy * ring}`;
  return (
    <>
      <path className="under" d={line} />
      <path className="over" d={line} />
      <circle className="under" cx={at[0]} cy={at[1]} r={ring} />
      <circle className="over" cx={at[0]} cy={at[1]} r={ring} />
    </>
  );
}
