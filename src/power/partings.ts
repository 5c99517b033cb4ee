import type { Card } from '../card/index.ts';
import type { Point } from '../geometry/index.ts';
import type { Netlist } from '../net/index.ts';
import type { Touch } from './layCircuit.ts';

/**
 * Where a piece is one in the mask but parted for the nets: at a seen break, and beneath the body of a lamp whose two
 * pads are on different nets. Nothing conducts across these places.
 * @param pieceAt the piece that a pad lies on
 */
export function partings(
  { cuts = [], netOf }: Netlist,
  { lamps }: Card,
  places: ReadonlyMap<string, Point>,
  pieceAt: (pad: string, at: Point) => number | undefined,
): Touch[] {
  const breaks = cuts.map(({ piece, at }, n) => ({ key: `break ${n + 1}`, piece, at, across: true }));
  const bodies = lamps.flatMap(({ id }) => {
    const [plus, minus] = [places.get(`${id}+`), places.get(`${id}-`)];
    if (!plus || !minus || netOf[`${id}+`] === netOf[`${id}-`]) return [];
    const piece = pieceAt(`${id}+`, plus);
    if (piece === undefined || piece !== pieceAt(`${id}-`, minus)) return [];
    const at = [(plus[0] + minus[0]) / 2, (plus[1] + minus[1]) / 2] as const;
    return [{ key: `body of ${id}`, piece, at, across: true }];
  });
  return [...breaks, ...bodies];
}
