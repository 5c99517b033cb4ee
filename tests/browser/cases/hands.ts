import { expect, test } from 'vitest';
import type { CDPSession, Page } from 'playwright-core';
import type { Bench } from '../page.test.ts';
import { openStep, phone } from '../stage.ts';

/** Gives the camera a torch, and notes how it is set. Media Capture and Streams; torch: MediaStream Image Capture (W3C). */
function lendTorch(): void {
  const told: unknown[] = [];
  Object.assign(globalThis, { told });
  const { prototype } = MediaStreamTrack;
  const { getCapabilities, applyConstraints } = prototype;
  prototype.getCapabilities = function () {
    return { ...getCapabilities.call(this), torch: true };
  };
  prototype.applyConstraints = async function (constraints) {
    const torch = (constraints?.advanced?.[0] as { torch?: boolean } | undefined)?.torch;
    if (torch === undefined) return applyConstraints.call(this, constraints);
    told.push(torch);
  };
}

const toldToTorch = () => (globalThis as unknown as { told: unknown[] }).told;

/** Pastes a picture of a white card on grey, as a clipboard holds it: Clipboard API and events (W3C). */
async function pastePicture(): Promise<void> {
  const canvas = new OffscreenCanvas(640, 480);
  const brush = canvas.getContext('2d')!;
  brush.fillStyle = '#555';
  brush.fillRect(0, 0, 640, 480);
  brush.fillStyle = '#fff';
  brush.fillRect(170, 40, 280, 400);
  const clipboardData = new DataTransfer();
  clipboardData.items.add(new File([await canvas.convertToBlob()], 'image.png', { type: 'image/png' }));
  dispatchEvent(new ClipboardEvent('paste', { clipboardData }));
}

/** Two fingers move apart about a place, from 40 to 160 px. */
async function pinchOpen(hand: CDPSession, x: number, y: number): Promise<void> {
  const fingers = (apart: number) => [-apart / 2, apart / 2].map((off, id) => ({ x: x + off, y, id }));
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: ReturnType<typeof fingers>) =>
    hand.send('Input.dispatchTouchEvent', { type, touchPoints });
  await send('touchStart', fingers(40));
  for (const apart of [60, 110, 160]) await send('touchMove', fingers(apart));
  await send('touchEnd', []);
}

const widthOf = async (page: Page): Promise<number> =>
  (await page.getByAltText('The photograph').first().boundingBox())?.width ?? 0;

export function handCases(bench: () => Bench): void {
  test('lights the torch, takes a picture that is pasted, and two fingers look closer at it', async () => {
    const { stage } = bench();
    const context = await stage.browser.newContext({
      viewport: phone,
      hasTouch: true,
      permissions: ['camera'],
      serviceWorkers: 'block',
    });
    // Hands need no engine, and its start takes seconds.
    await context.route(/\.(wasm|onnx)$/, (route) => route.abort());
    const page = await context.newPage();
    await page.addInitScript(lendTorch);
    await page.goto(stage.url);
    await page.getByRole('button', { name: 'Use the camera here' }).click();
    const torch = page.getByRole('button', { name: 'Torch' });
    await torch.click();
    await expect.poll(() => torch.getAttribute('aria-pressed')).toBe('true');
    await torch.click();
    await expect.poll(() => torch.getAttribute('aria-pressed')).toBe('false');
    expect(await page.evaluate(toldToTorch)).toEqual([true, false]);
    await page.getByRole('button', { name: 'Close the camera' }).click();

    await page.evaluate(pastePicture);
    await openStep(page, 'Square');
    await page.getByAltText('The photograph').first().waitFor();
    const before = await widthOf(page);
    const {
      x = 0,
      y = 0,
      width = 0,
      height = 0,
    } = (await page.locator('.surface-box').first().boundingBox()) ?? {};
    await pinchOpen(await context.newCDPSession(page), x + width / 2, y + height / 2);
    await expect.poll(() => widthOf(page)).toBeGreaterThan(1.5 * before);
    await context.close();
  });
}
