import { useEffect, useRef } from 'react';
import { reword } from '../state/editCard.ts';
import { goTo } from '../state/goTo.ts';
import { useBench } from '../state/store.ts';
import { steps } from '../steps.ts';
import { benchWords as words } from '../../words/bench.ts';

/** The running head: whose proof this is, and the steps in words. */
export function Head() {
  return (
    <header className="head">
      <p className="wordmark">{words.name}</p>
      <Title />
      <nav aria-label={words.stepsLabel}>
        <ol className="steps">
          {steps.map(({ name }, i) => (
            <StepLink key={name} name={name} number={i + 1} />
          ))}
        </ol>
      </nav>
    </header>
  );
}

function StepLink({ name, number }: { name: (typeof steps)[number]['name']; number: number }) {
  const here = useBench(({ step }) => step === name);
  const ref = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (here) ref.current?.scrollIntoView({ block: 'nearest', inline: 'center' });
  }, [here]);
  return (
    <li ref={ref}>
      <button type="button" aria-current={here ? 'step' : undefined} onClick={() => goTo(name)}>
        <span className="step-number">{number}</span> {words.steps[name]}
      </button>
    </li>
  );
}

function Title() {
  const title = useBench(({ card }) => card.title ?? '');
  return (
    <input
      className="title"
      aria-label={words.titleLabel}
      placeholder={words.untitled}
      maxLength={200}
      value={title}
      onChange={({ target }) => reword({ title: target.value || undefined })}
    />
  );
}
