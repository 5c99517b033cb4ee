import { offlineWords as words } from '../../words/offline.ts';
import { useBench } from '../state/store.ts';

/** Whether the page works without a network yet, and what its first visit fetches. */
export function OfflineLine() {
  const offline = useBench((state) => state.offline);
  return (
    <p className="pencil" role="status">
      {offline?.is === 'fetching' && words.fetching(offline.bytes)}
      {offline?.is === 'ready' && words.ready}
    </p>
  );
}

/** A newer page waits until the maker asks for it. */
export function NewerLine() {
  const offline = useBench((state) => state.offline);
  if (offline?.is !== 'newer') return <div role="status" />;
  return (
    <div role="status" className="notice news">
      <p>{words.newer}</p>
      <button type="button" onClick={offline.take}>
        {words.take}
      </button>
    </div>
  );
}
