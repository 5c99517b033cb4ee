import type { Card } from '../../card/schema.ts';
import { foamPlaces } from '../../parts/foamPlaces.ts';
import type { Point } from '../../geometry/index.ts';
import { foldWords } from '../../words/fold.ts';
import { length } from '../../words/lengths.ts';

/** Where foam belongs, in words. */
export function FoamLines({ card }: { card: Card }) {
  const { foam: words } = foldWords.closing;
  const { cell, strokeEnd } = foamPlaces(card);
  const at = (say: (x: string, y: string) => string, [x, y]: Point) => say(length(x), length(y));
  return (
    <>
      <h3>{words.heading}</h3>
      <ul className="landings">
        {cell && <li>{at(words.cell, cell)}</li>}
        {strokeEnd && <li>{at(words.strokeEnd, strokeEnd)}</li>}
        <li>{words.rest}</li>
      </ul>
    </>
  );
}
