import { benchWords as words } from '../../words/bench.ts';
import { scaleByCell } from '../../parts/suggest/scaleByCell.ts';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';

/** Under this the outline is a guess: the handles are what counts. */
const sure = 0.5;
/** A bow of the edges worth telling, mm. */
const bowMm = 0.7;
const coarsePxPerMm = 8;

/** How the corners stand and what the photograph can show. */
export function SquareLines({
  shown: { outline, sheet, traced, cautions, suggested },
  own,
}: {
  shown: Shown;
  own: boolean;
}) {
  const { square } = words;
  const scale = useBench(({ card }) => scaleByCell(card, suggested)?.say);
  const found = outline.certainty >= sure ? square.sure(Math.round(outline.certainty * 100)) : square.unsure;
  return (
    <div className="lines" role="status">
      <p className={!own && outline.certainty < sure ? 'warn' : undefined}>{own ? square.own : found}</p>
      <p className="pencil">
        {square.result(sheet.photoPxPerMm.toFixed(1), traced.smallestGapMm.toFixed(1))}
      </p>
      {sheet.photoPxPerMm < coarsePxPerMm && <p className="warn">{square.coarse}</p>}
      {(outline.bow || outline.residualMm > bowMm) && (
        <p className="warn">
          {(outline.bow ? square.followed : square.bowed)(outline.residualMm.toFixed(1))}
        </p>
      )}
      {scale && <p className="warn">{scale}</p>}
      {cautions.map((caution) => (
        <p key={caution} className="warn">
          {caution}
        </p>
      ))}
    </div>
  );
}
