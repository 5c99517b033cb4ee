import type { Box, Point } from '../../geometry/index.ts';
import type { Shape } from './types.ts';

/** A shape moved by so many mm. */
export function moved(shape: Shape, dx: number, dy: number): Shape {
  const to = ([x, y]: Point): Point => [x + dx, y + dy];
  const box = ({ x0, y0, x1, y1 }: Box): Box => ({ x0: x0 + dx, y0: y0 + dy, x1: x1 + dx, y1: y1 + dy });
  switch (shape.kind) {
    case 'path':
      return { ...shape, lines: shape.lines.map((line) => line.map(to)) };
    case 'circle':
    case 'text':
      return { ...shape, at: to(shape.at) };
    case 'image':
      return { ...shape, box: box(shape.box) };
  }
}
