import { registerSW } from 'virtual:pwa-register';
import { z } from 'zod';
import { change } from '../state/store.ts';

const note = z.object({ bytes: z.number().positive() });

/**
 * Keeps the page on this device for work without a network, and tells how far that is.
 * @param warm settles when the engines are here, so that keeping does not hold them up
 */
export async function keepPage(warm: Promise<unknown>): Promise<void> {
  if (!('serviceWorker' in navigator) || import.meta.env.DEV) return;
  const known = await navigator.serviceWorker.getRegistration();
  if (!known?.active) await tellSize();
  await warm;
  let asked = false;
  const takeNewer = () => {
    asked = true;
    void take().then(reloadOnceActive);
  };
  const take = registerSW({
    immediate: true,
    onOfflineReady: () => change({ offline: { is: 'ready' } }),
    onNeedRefresh: () => change({ offline: { is: 'newer', take: takeNewer } }),
    // Another tab may have asked for the newer page: this one goes on until it is told to.
    onNeedReload: () => asked || change({ offline: { is: 'newer', take: () => location.reload() } }),
  });
  if (known?.active) change({ offline: { is: 'ready' } });
}

async function tellSize(): Promise<void> {
  const told = await fetch('offline.json').then(
    (response) => response.json(),
    () => undefined,
  );
  const { data } = note.safeParse(told);
  if (data) change({ offline: { is: 'fetching', bytes: data.bytes } });
}

/** A page of the first visit has no service worker of its own to tell it, so it looks at the newer one itself. */
async function reloadOnceActive(): Promise<void> {
  const kept = await navigator.serviceWorker.ready;
  while (kept.waiting || kept.active?.state !== 'activated') {
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  location.reload();
}
