import { benchWords as words } from '../../words/bench.ts';
import { pixelDensity } from '../../words/density.ts';
import { length } from '../../words/lengths.ts';
import type { Shown } from '../state/types.ts';

/** Under this the outline is a guess: the handles are what counts. */
const sure = 0.5;
/** A bow of the edges worth telling, mm. */
const bowMm = 0.7;
const coarsePxPerMm = 8;

/** How the corners stand and what the photograph can show. */
export function SquareLines({
  shown: { outline, sheet, traced, cautions, scale },
  own,
}: {
  shown: Shown;
  own: boolean;
}) {
  const { square } = words;
  const found = outline.certainty >= sure ? square.sure(Math.round(outline.certainty * 100)) : square.unsure;
  return (
    <div className="lines" role="status">
      <p className={!own && outline.certainty < sure ? 'warn' : undefined}>{own ? square.own : found}</p>
      <p className="pencil">
        {square.result(pixelDensity(sheet.photoPxPerMm), length(traced.smallestGapMm))}
      </p>
      {sheet.photoPxPerMm < coarsePxPerMm && (
        <p className="warn">{square.coarse(pixelDensity(coarsePxPerMm))}</p>
      )}
      {(outline.bow || outline.residualMm > bowMm) && (
        <p className="warn">{(outline.bow ? square.followed : square.bowed)(length(outline.residualMm))}</p>
      )}
      {scale?.say && <p className="warn">{scale.say}</p>}
      {cautions.map((caution) => (
        <p key={caution} className="warn">
          {caution}
        </p>
      ))}
    </div>
  );
}
