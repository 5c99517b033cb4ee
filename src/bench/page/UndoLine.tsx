import { benchWords as words } from '../../words/bench.ts';
import { redo, undo } from '../state/editCard.ts';
import { useBench } from '../state/store.ts';

/** Undo and redo in words. */
export function UndoLine() {
  const canUndo = useBench(({ past }) => past.length > 0);
  const canRedo = useBench(({ future }) => future.length > 0);
  return (
    <div className="line-of-acts">
      <button type="button" disabled={!canUndo} onClick={undo}>
        {words.undo}
      </button>
      <button type="button" disabled={!canRedo} onClick={redo}>
        {words.redo}
      </button>
    </div>
  );
}
