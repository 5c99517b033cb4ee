import { expect, test } from 'vitest';
import type { Bench } from '../page.test.ts';
import { phone, visitor } from '../stage.ts';

interface Locks {
  locks: WakeLockSentinel[];
}

/** Stands in for the screen's lock, and counts. A hidden page loses it: Screen Wake Lock API (W3C). */
function countLocks(): void {
  const locks: WakeLockSentinel[] = [];
  Object.assign(globalThis, { locks });
  navigator.wakeLock.request = async () => {
    const lock = { released: false, release: async () => void (lock.released = true) };
    locks.push(lock as WakeLockSentinel);
    return lock as WakeLockSentinel;
  };
}

/** How many locks were taken, and how many are held. */
function locksHeld(): number[] {
  const { locks } = globalThis as unknown as Locks;
  return [locks.length, locks.filter(({ released }) => !released).length];
}

async function hideAndShow(): Promise<void> {
  const seen = (state: string) => {
    Object.defineProperty(document, 'visibilityState', { value: state, configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  };
  seen('hidden');
  for (const lock of (globalThis as unknown as Locks).locks) await lock.release();
  seen('visible');
  seen('visible');
}

export function cameraCases(bench: () => Bench): void {
  test('takes a photograph from the live camera on a phone', async () => {
    const { stage } = bench();
    const context = await visitor(stage, phone);
    const page = await context.newPage();
    await page.addInitScript(countLocks);
    await page.goto(stage.url);
    await page.getByRole('button', { name: 'Use the camera here' }).click();
    // The film that stands in for the camera is a still: it is held as steady as can be.
    await page.getByText('Steady: take it').waitFor({ timeout: 30_000 });
    await expect.poll(() => page.evaluate(locksHeld)).toEqual([1, 1]);
    await page.evaluate(hideAndShow);
    await expect.poll(() => page.evaluate(locksHeld)).toEqual([2, 1]);
    await page.getByRole('button', { name: 'Take it' }).click();
    await expect.poll(() => page.evaluate(locksHeld), { timeout: 20_000 }).toEqual([2, 0]);
    await page.getByRole('button', { name: 'Square' }).and(page.locator('[aria-current=step]')).waitFor();
    const shown = page.getByAltText('The photograph').first();
    await shown.waitFor();
    const size = await shown.evaluate((image: HTMLImageElement) => [image.naturalWidth, image.naturalHeight]);
    expect(size).toEqual([960, 1280]);
    await context.close();
  });

  test('says what to do where there is no camera', async () => {
    const { stage } = bench();
    const context = await visitor(stage, phone);
    const page = await context.newPage();
    await page.addInitScript(() => {
      navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('', 'NotAllowedError'));
    });
    await page.goto(stage.url);
    await page.getByRole('button', { name: 'Use the camera here' }).click();
    await page.getByText('The camera may not be used here').waitFor();
    await page.getByRole('button', { name: 'Close the camera' }).click();
    await page.getByRole('heading', { name: 'Photograph the open base' }).waitFor();
    await context.close();
  });
}
