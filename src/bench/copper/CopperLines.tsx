import { benchWords as words } from '../../words/bench.ts';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';
import { Troubles } from './Troubles.tsx';

/** What was seen, in figures. */
export function CopperLines({ shown }: { shown: Shown }) {
  const strokes = useBench(({ card }) => card.touch_up.length);
  const area = shown.traced.pieces.reduce((sum, { areaMm2 }) => sum + areaMm2, 0);
  return (
    <>
      <Troubles shown={shown} />
      <p className="pencil" role="status">
        {words.copper.pieces(shown.traced.pieces.length)}, {words.copper.area(area)},{' '}
        {words.copper.strokes(strokes)}
      </p>
    </>
  );
}
