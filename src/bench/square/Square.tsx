import { benchWords as words } from '../../words/bench.ts';
import { Sheet } from '../page/Sheet.tsx';
import { UndoLine } from '../page/UndoLine.tsx';
import { useBench } from '../state/store.ts';
import { BaseSize } from './BaseSize.tsx';
import { CornerSurface } from './CornerSurface.tsx';
import { findAgain, turnQuarter } from './edits.ts';
import { MeasureByCard } from './MeasureByCard.tsx';
import { Preview } from './Preview.tsx';
import './square.css';
import { SquareLines } from './SquareLines.tsx';

/** The base's corners on the photograph, its size, and the squared-up sheet that follows. */
export default function Square() {
  const shot = useBench((state) => state.shot);
  const shown = useBench((state) => state.shown);
  const own = useBench(({ card }) => card.corners_px !== undefined);
  if (!shot || !shown) return null;
  return (
    <Sheet
      heading={words.square.heading}
      sheet={<CornerSurface shot={shot} corners={shown.outline.cornersPx} />}
    >
      <SquareLines shown={shown} own={own} />
      <BaseSize />
      <MeasureByCard corners={shown.outline.cornersPx} />
      <div className="line-of-acts">
        <button type="button" onClick={turnQuarter}>
          {words.square.turn}
        </button>
        <button type="button" disabled={!own} onClick={findAgain}>
          {words.square.find}
        </button>
      </div>
      <UndoLine />
      <Preview shown={shown} />
    </Sheet>
  );
}
