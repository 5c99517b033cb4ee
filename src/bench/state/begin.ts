import { call } from '../work/client.ts';
import { openDemo } from './demo.ts';
import { fetchEvaluation } from './evaluate.ts';
import { keepFromNowOn, restore } from './keep.ts';
import { change } from './store.ts';

/** Starts the page: brings back what was kept, opens the demo where the address asks for it, warms the worker. */
export async function begin(address: URL): Promise<void> {
  const warm = call('warm', null, { onShare: (share) => change({ engine: { share, ready: false } }) });
  void warm.then(() => change({ engine: { share: 1, ready: true } }));
  void fetchEvaluation();
  if (address.searchParams.has('demo')) await openDemo();
  else await restore();
  keepFromNowOn();
}
