import { restoreClass } from '../classroom/classroom.ts';
import { call } from '../worker/client.ts';
import { openDemo } from './demo.ts';
import { fetchEvaluation } from './evaluate.ts';
import { keepFromNowOn, restore } from './keep.ts';
import { change } from './store.ts';

/** Starts the page: brings back what was kept, opens the demo where the address asks for it, warms the worker. */
export async function begin(address: URL): Promise<void> {
  await painted();
  const warm = call('warm', null, { onShare: (share) => change({ engine: { share, ready: false } }) });
  void warm.then(() => change({ engine: { share: 1, ready: true } }));
  void import('../offline/keepPage.ts').then(({ keepPage }) => keepPage(warm)).catch(() => undefined);
  void fetchEvaluation();
  keepFromNowOn();
  if (address.searchParams.has('demo')) await openDemo();
  else await restore();
  await restoreClass();
}

/** After the first paint, which must wait for none of the engine. A page in the background does not wait for it. */
function painted(): Promise<void> {
  return new Promise((resolve) => {
    if (document.hidden) return resolve();
    new PerformanceObserver(() => resolve()).observe({ type: 'paint', buffered: true });
  });
}
