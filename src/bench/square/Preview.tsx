import { benchWords as words } from '../../words/bench.ts';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';
import { useBitmap } from '../surface/useBitmap.ts';

/** The squared-up sheet, small: lines must run straight here. */
export function Preview({ shown: { picture } }: { shown: Shown }) {
  const busy = useBench((state) => state.busy !== undefined);
  const ref = useBitmap(picture);
  return (
    <figure className="preview" aria-busy={busy}>
      <canvas ref={ref} role="img" aria-label={words.square.preview} />
      <figcaption className="pencil">{words.square.preview}</figcaption>
    </figure>
  );
}
