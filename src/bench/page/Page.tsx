import { Suspense } from 'react';
import { bench, useBench } from '../state/store.ts';
import { steps } from '../steps.ts';
import { benchWords as words } from '../../words/bench.ts';
import { NewerLine } from '../offline/OfflineLine.tsx';
import { Foot } from './Foot.tsx';
import { Head } from './Head.tsx';
import { NoPhoto } from './NoPhoto.tsx';
import { NoticeLine } from './NoticeLine.tsx';
import { useUndoKeys } from './useUndoKeys.ts';
import { Working } from './Working.tsx';

/** The proof sheet: a head, the step at hand, the verdict at the foot. */
export function Page() {
  const name = useBench(({ step }) => step);
  const hasPhoto = useBench(({ shot }) => shot !== undefined);
  const ready = useBench(({ shown }) => shown !== undefined);
  const cardId = useBench((state) => state.cardId);
  useUndoKeys();
  const { Face, needsPhoto } = steps.find((step) => step.name === name) ?? steps[0];
  return (
    <>
      <a className="skip" href="#work">
        {words.skip}
      </a>
      <Head />
      <NoticeLine />
      <NewerLine />
      <main id="work" key={`${cardId} ${name}`} tabIndex={-1} aria-label={words.steps[bench().step]}>
        {needsPhoto && !ready ? (
          hasPhoto ? (
            <Working />
          ) : (
            <NoPhoto />
          )
        ) : (
          <Suspense fallback={<Working />}>
            <Face />
          </Suspense>
        )}
      </main>
      <Foot />
    </>
  );
}
