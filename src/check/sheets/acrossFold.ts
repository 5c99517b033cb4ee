import type { CopperMask } from '../../copper/index.ts';
import type { Point, Segment } from '../../geometry/index.ts';

const stepMm = 0.1;
/** A paper's own edge hides what lies nearer to it than this, mm. */
const insetMm = 2;

/** Copper that reaches a fold: from and to, mm along it from its first end. */
export interface Reach {
  from: number;
  to: number;
}

/**
 * Where copper reaches a fold line.
 * @param inward unit vector from the fold into the sheet
 */
export function reachesFold(mask: CopperMask, [a, b]: Segment, inward: Point): Reach[] {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const found: Reach[] = [];
  let from: number | undefined;
  for (let t = 0; t <= length + stepMm; t += stepMm) {
    const at: Point = [a[0] + t * ux + insetMm * inward[0], a[1] + t * uy + insetMm * inward[1]];
    if (t <= length && isCopper(mask, at)) from ??= t;
    else if (from !== undefined) {
      if (t - from >= 1) found.push({ from, to: t - stepMm });
      from = undefined;
    }
  }
  return found;
}

/**
 * How far strips that run over the fold lie apart along it, at worst.
 * @returns undefined where none runs over it
 */
export function apartAtFold(base: Reach[], flap: Reach[]): { mm: number; along: number } | undefined {
  const middle = ({ from, to }: Reach) => (from + to) / 2;
  const pairs = flap.flatMap((own) => {
    const partner = base
      .map((each) => ({ each, mm: Math.abs(middle(each) - middle(own)) }))
      .sort((p, q) => p.mm - q.mm)[0];
    return partner && partner.mm < 5 ? [{ mm: partner.mm, along: middle(partner.each) }] : [];
  });
  return pairs.sort((p, q) => q.mm - p.mm)[0];
}

export function isCopper({ width, height, pxPerMm, originMm, filled }: CopperMask, [x, y]: Point): boolean {
  const i = Math.floor((x - originMm[0]) * pxPerMm);
  const j = Math.floor((y - originMm[1]) * pxPerMm);
  return i >= 0 && j >= 0 && i < width && j < height && filled[j * width + i] === 1;
}

/** The unit vector across a fold line towards a place. */
export function towards([a, b]: Segment, p: Point): Point {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [nx, ny] = [-(b[1] - a[1]) / length, (b[0] - a[0]) / length];
  const side = (p[0] - a[0]) * nx + (p[1] - a[1]) * ny;
  return side < 0 ? [-nx, -ny] : [nx, ny];
}
