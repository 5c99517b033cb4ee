import type { Point } from '../../geometry/index.ts';
import type { Shape } from '../drawing/types.ts';

/**
 * Upright symbols about a middle [x, y], each 8 mm high between its terminals, current downwards.
 * Drawn here after the shapes of IEC 60617: 05-03-02 light-emitting diode, 06-15-01 primary cell, 07-02-01 make contact,
 * 07-07-02 push-button, 04-01-01 resistor.
 */
export const symbolMm = 8;
const pen = 0.35;

/** A symbol's terminals turned over when its upper net is drawn below its lower. */
export type Turn = 1 | -1;

export function ledSymbol([x, y]: Point, turn: Turn): Shape[] {
  const to = (dx: number, dy: number): Point => [x + dx, y + turn * dy];
  return [
    lines([to(0, -4), to(0, -2)], [to(0, 2), to(0, 4)], [to(-2.2, 2), to(2.2, 2)]),
    {
      kind: 'path',
      lines: [[to(-2.2, -2), to(2.2, -2), to(0, 2)]],
      closed: true,
      stroke: 'graphite',
      width: pen,
      fill: 'paper',
    },
    ...[-0.6, 1.1].flatMap((shift) => arrow([x + 2.6, y + shift + 0.4], [x + 4.6, y + shift - 1.2])),
  ];
}

function arrow(from: Point, to: Point): Shape[] {
  const [x, y] = to;
  const head: Point[] = [
    [x, y],
    [x - 1.1, y + 0.25],
    [x - 0.45, y + 0.95],
  ];
  return [lines([from, to]), { kind: 'path', lines: [head], closed: true, fill: 'graphite' }];
}

export function cellSymbol([x, y]: Point, turn: Turn): Shape[] {
  const to = (dx: number, dy: number): Point => [x + dx, y + turn * dy];
  return [
    lines([to(0, -4), to(0, -0.7)], [to(0, 0.7), to(0, 4)], [to(-3.2, -0.7), to(3.2, -0.7)]),
    { kind: 'path', lines: [[to(-1.6, 0.7), to(1.6, 0.7)]], stroke: 'graphite', width: 0.8 },
    lines([to(-3.6, -2.3), to(-2.2, -2.3)], [to(-2.9, -3), to(-2.9, -1.6)]),
  ];
}

/** A make contact; pressed ones carry the mark of a push-button. */
export function contactSymbol([x, y]: Point, how: 'press' | 'stroke'): Shape[] {
  const arm: Point[] = [
    [x, y + 2],
    [x - 2.2, y - 1.8],
  ];
  const button: Point[][] = [
    [
      [x - 1.2, y],
      [x - 4, y],
    ],
    [
      [x - 4, y - 1.4],
      [x - 4, y + 1.4],
    ],
  ];
  return [
    lines(
      [
        [x, y - 4],
        [x, y - 2],
      ],
      [
        [x, y + 2],
        [x, y + 4],
      ],
      arm,
    ),
    ...(how === 'press' ? [lines(...button)] : []),
  ];
}

export function resistorSymbol([x, y]: Point): Shape[] {
  const body: Point[] = [
    [x - 1.2, y - 3],
    [x + 1.2, y - 3],
    [x + 1.2, y + 3],
    [x - 1.2, y + 3],
  ];
  return [{ kind: 'path', lines: [body], closed: true, stroke: 'graphite', width: pen, fill: 'paper' }];
}

export function lines(...paths: Point[][]): Shape {
  return { kind: 'path', lines: paths, stroke: 'graphite', width: pen };
}
