import type { Lamp, LampColour } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { halosOf } from '../../power/lampLight.ts';
import type { StatePower } from '../../power/index.ts';
import { decimal } from '../../words/numbers.ts';
import { recordWords as words } from '../../words/record.ts';
import { sayState } from '../../words/states.ts';
import type { Drawing, Shape } from './types.ts';

const nameMm = 34;
const columnMm = 13;
const rowMm = 15;
const headMm = 6;
/** Drawing mm per unit of a halo's radius. */
const haloMm = 0.3;

/** The lamps that fit beside one another on a page, and the states below one another. */
export const mostAcross = 11;
export const mostDown = 14;

/** Lamps drawn at their brightness: states go down, lamps across. */
export function lampStrip(states: readonly StatePower[], lamps: readonly Lamp[]): Drawing {
  const box = { x0: 0, y0: 0, x1: nameMm + columnMm * lamps.length, y1: headMm + rowMm * states.length };
  return {
    title: words.figure.lamps,
    box,
    shapes: [
      { kind: 'path', lines: [cornersOf(box)], closed: true, fill: 'night' },
      ...lamps.map((lamp, i) => chalk([middleOf(i), headMm - 1.5], lamp.id, { bold: true })),
      ...states.flatMap((state, row) => rowShapes(state, lamps, headMm + row * rowMm)),
    ],
  };
}

function rowShapes(state: StatePower, lamps: readonly Lamp[], top: number): Shape[] {
  const name = chalk([2, top + rowMm / 2], sayState(state.name), { anchor: 'start' });
  return [name, ...lamps.flatMap((lamp, i) => lampShapes(lamp, state, [middleOf(i), top + 6]))];
}

/** Dark lamps are told by a cross and by their word, not by the missing light alone. */
function lampShapes({ id, colour }: Lamp, { lamps }: StatePower, at: Point): Shape[] {
  const { look = 'dark', glow = 0, mA = 0 } = lamps[id] ?? {};
  const light = `light ${colour as LampColour}` as const;
  const halos = look === 'dark' ? [] : halosOf(glow);
  const said = `${mA >= 0.005 ? `${decimal(mA, mA < 1 ? 2 : 1)} ` : ''}${words.states.looks[look]}`;
  return [
    ...halos.map(({ radius, opacity }): Shape => ({
      kind: 'circle',
      at,
      radius: haloMm * radius,
      fill: light,
      opacity,
    })),
    {
      kind: 'circle',
      at,
      radius: haloMm * 5,
      stroke: 'grey',
      width: 0.25,
      ...(look === 'dark' ? {} : { fill: light }),
    },
    ...(look === 'dark' ? [cross(at)] : []),
    chalk([at[0], at[1] + 7.5], said),
  ];
}

function cross([x, y]: Point): Shape {
  const lines: Point[][] = [
    [
      [x - 1, y - 1],
      [x + 1, y + 1],
    ],
    [
      [x - 1, y + 1],
      [x + 1, y - 1],
    ],
  ];
  return { kind: 'path', lines, stroke: 'grey', width: 0.3 };
}

function chalk(at: Point, text: string, style: { bold?: boolean; anchor?: 'start' | 'middle' } = {}): Shape {
  return { kind: 'text', at, text, size: style.bold ? 2.8 : 2.4, anchor: 'middle', ink: 'chalk', ...style };
}

function middleOf(column: number): number {
  return nameMm + columnMm * (column + 0.5);
}

function cornersOf({ x0, y0, x1, y1 }: Drawing['box']): Point[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}
