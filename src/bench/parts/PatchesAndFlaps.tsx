import type { Card } from '../../card/index.ts';
import { foldWords } from '../../words/fold.ts';
import { planWords } from '../../words/plan.ts';
import { goTo } from '../state/goTo.ts';

/** The card's patches and flaps by name, and the way to where they are drawn. */
export function PatchesAndFlaps({ card: { patches, flaps } }: { card: Card }) {
  const { inParts } = foldWords;
  const { page } = planWords;
  const names = [...patches.map(({ id }) => page.patch(id)), ...flaps.map(({ id }) => page.flap(id))];
  return (
    <section aria-labelledby="parts-sheets">
      <h2 id="parts-sheets">{inParts.heading}</h2>
      <p className="pencil">{names.length > 0 ? names.join(', ') : inParts.none}</p>
      <button type="button" onClick={() => goTo('plan')}>
        {inParts.edit}
      </button>
    </section>
  );
}
