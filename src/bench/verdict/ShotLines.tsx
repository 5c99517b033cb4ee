import { copperWords } from '../../words/copper.ts';
import { benchWords as words } from '../../words/bench.ts';
import { length } from '../../words/lengths.ts';
import { dropShot } from '../state/shootAgain.ts';
import type { Shown } from '../state/types.ts';

/** What became of further shots of the sheet, each to be left out again. */
export function ShotLines({ shots }: { shots: Shown['shots'] }) {
  return shots.map(({ name, used, why = 'misfit', misfitMm }, index) => (
    <p key={`${index} ${name}`} className="pencil" role="status">
      {used
        ? words.shots.used(name, length(misfitMm, 2))
        : words.shots.left(name, copperWords.shotLeftOut[why])}{' '}
      <button
        type="button"
        className="quiet"
        aria-label={words.shots.dropWhich(name)}
        onClick={() => void dropShot(index)}
      >
        {words.shots.drop}
      </button>
    </p>
  ));
}
