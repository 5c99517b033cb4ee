import { benchWords as words } from '../../words/bench.ts';
import { useBench } from '../state/store.ts';
import { usePhotoUrl } from './usePhotoUrl.ts';

/** The photograph, waiting, while the first check of it runs. */
export function Working() {
  const busy = useBench((state) => state.busy);
  const url = usePhotoUrl();
  return (
    <div className="working" aria-busy={busy !== undefined}>
      {url && <img src={url} alt={words.photoAlt} />}
      <p>{busy ? words.stages[busy] : words.opening}</p>
    </div>
  );
}
