import type { PlanComparison } from '../../plan/index.ts';
import { planWords } from '../../words/plan.ts';

interface Props {
  compared: PlanComparison | undefined;
  wipe: number;
  setWipe(share: number): void;
  hide(hidden: boolean): void;
}

/** How far the build has come, and the slider and switch that lay it over its plan. */
export function Compared({ compared, wipe, setWipe, hide }: Props) {
  const { page: text } = planWords;
  return (
    <section aria-labelledby="plan-compare">
      <h2 id="plan-compare">{text.compareHeading}</h2>
      {compared && (
        <>
          <p>
            <b>{planWords.progress(compared.progress.laid, compared.progress.of)}</b>
          </p>
          <progress
            className="plan-progress"
            value={compared.progress.laid}
            max={compared.progress.of}
            aria-label={planWords.progress(compared.progress.laid, compared.progress.of)}
          />
        </>
      )}
      <label className="field">
        <span>{text.wipe}</span>
        <input
          type="range"
          min={0}
          max={1}
          step={0.01}
          value={wipe}
          aria-valuetext={text.wiped(Math.round(100 * wipe))}
          onChange={({ target }) => setWipe(Number(target.value))}
        />
      </label>
      <div className="line-of-acts">
        <button
          type="button"
          onPointerDown={() => hide(true)}
          onPointerUp={() => hide(false)}
          onPointerLeave={() => hide(false)}
          onKeyDown={({ key }) => (key === ' ' || key === 'Enter') && hide(true)}
          onKeyUp={() => hide(false)}
          onBlur={() => hide(false)}
        >
          {text.blink}
        </button>
        <span className="pencil">{text.blinkKeys}</span>
      </div>
    </section>
  );
}
