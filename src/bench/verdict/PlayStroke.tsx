import { useEffect, useState } from 'react';
import { benchWords as words } from '../../words/bench.ts';
import { sayState } from '../../words/states.ts';

/** Time a state is shown for, ms. */
const stepMs = 900;

interface Props {
  names: string[];
  state: string | undefined;
  setState(name: string | undefined): void;
}

/** Plays the states one after another over the photograph: what a finger along the card would light. */
export function PlayStroke({ names, state, setState }: Props) {
  const [step, setStep] = useState<number>();
  useEffect(() => {
    if (step === undefined) return;
    if (step >= names.length) return setStep(undefined);
    setState(names[step]);
    const timer = setTimeout(() => setStep(step + 1), stepMs);
    return () => clearTimeout(timer);
    // The names are the same list as long as the netlist is; setState is the verdict's own setter.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [step]);
  const playing = step !== undefined;
  return (
    <div className="line-of-acts">
      <button type="button" onClick={() => setStep(playing ? undefined : 0)}>
        {playing ? words.states.stop : words.states.play}
      </button>
      <span role="status" className="pencil">
        {state !== undefined && words.states.playing(sayState(state))}
      </span>
    </div>
  );
}
