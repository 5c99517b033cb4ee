import type { PlanComparison } from '../../plan/index.ts';
import { planWords } from '../../words/plan.ts';
import { Slider } from '../page/Slider.tsx';

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
      <Slider
        label={text.wipe}
        value={wipe}
        step={0.01}
        said={text.wiped(Math.round(100 * wipe))}
        set={setWipe}
      />
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
