/**
 * Keeps the screen awake until it is let go. A page that is hidden loses its lock, so it is asked for anew whenever
 * the page is seen again.
 * @source Screen Wake Lock API (W3C), section "Handling document loss of visibility"
 * @returns lets the screen sleep again
 */
export function stayAwake(): () => void {
  let lock: WakeLockSentinel | undefined;
  let asking = false;
  let over = false;
  const take = async () => {
    if (over || asking || document.visibilityState !== 'visible' || (lock && !lock.released)) return;
    asking = true;
    lock = await navigator.wakeLock?.request('screen').catch(() => undefined);
    asking = false;
    if (over) await lock?.release();
  };
  const again = () => void take();
  document.addEventListener('visibilitychange', again);
  void take();
  return () => {
    over = true;
    document.removeEventListener('visibilitychange', again);
    void lock?.release();
  };
}
