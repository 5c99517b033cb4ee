import { expect, it } from 'vitest';
import type { CopperMask } from '../../src/copper/index.ts';
import { lampLook, lampSees } from '../../src/trace/lampLook.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';

/** A sheet of 20 x 20 mm at 10 px/mm: a strip to the left, a lamp from 8 to 12 mm with grey ends, shade below it. */
function drawn(lamp: boolean) {
  const [width, height, pxPerMm] = [200, 200, 10];
  const rgb = new Uint8Array(3 * width * height);
  const [filled, chance] = [new Uint8Array(width * height), new Uint8Array(width * height)];
  for (let k = 0; k < filled.length; k++) {
    const [i, j] = [k % width, Math.floor(k / width)];
    const onStrip = i < 50;
    const onLamp = i >= 80 && i < 120 && j >= 80 && j < 120;
    const onEnd = !onLamp && i >= 70 && i < 130 && j >= 80 && j < 120;
    const shaded = j >= 120 && j < 130 && i >= 80 && i < 120;
    if (onStrip) filled[k] = 1;
    if (onLamp) chance[k] = 250;
    const grey = onEnd ? 150 : shaded ? 120 : 225;
    rgb.set(onStrip ? [180, 120, 80] : [grey, grey, grey - 5], 3 * k);
  }
  const mask = {
    width,
    height,
    pxPerMm,
    originMm: [0, 0],
    filled,
    likelihood: filled.map((v) => 250 * v),
    ...(lamp ? { lamp: chance } : {}),
  };
  return lampLook(mask as unknown as CopperMask, { width, height, pxPerMm, rgb } as unknown as SquaredSheet);
}

it('tells the body and the bare paper about it, and nothing of grey ends, deep shade and copper', () => {
  const seen = drawn(true)!;
  const at = (x: number, y: number) => seen[Math.round(y * 10) * 200 + Math.round(x * 10)];
  expect(at(10, 10)).toBe(lampSees.body);
  expect(at(6.5, 10)).toBe(lampSees.paper);
  expect(at(10, 7)).toBe(lampSees.paper);
  expect(at(7.5, 10)).toBe(0);
  expect(at(10, 12.5)).toBe(0);
  expect(at(4.9, 10)).toBe(0);
  expect(at(19, 19)).toBe(0);
});

it('tells nothing where no net saw the sheet', () => {
  expect(drawn(false)).toBeUndefined();
});
