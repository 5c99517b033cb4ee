/** A place [x, y]: mm on a sheet (origin at the base's top-left corner, x right, y down) unless a name ends in Px. */
export type Point = readonly [x: number, y: number];

/** A straight piece from a to b. */
export type Segment = readonly [a: Point, b: Point];

/** A closed ring of points, the last not repeated. */
export type Ring = readonly Point[];

/** An outer ring and its holes. */
export interface Polygon {
  outer: Ring;
  holes: Ring[];
}

/** Axis-parallel box, x0 <= x1, y0 <= y1. */
export interface Box {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

/** Four corners in the order top-left, top-right, bottom-right, bottom-left of the base frame. */
export type Quad = readonly [Point, Point, Point, Point];

/** A 3x3 projective map, row-major, h[8] = 1. */
export type Homography = readonly [number, number, number, number, number, number, number, number, number];
