import { expect, it } from 'vitest';
import { isBlind } from '../../src/trace/index.ts';
import { blindMap } from '../../src/trace/blind.ts';

/** 30 x 10 mm: paper, a burnt-out stretch, a black one; 10 px/mm. */
function sheet() {
  const [width, height] = [300, 100];
  const rgb = new Uint8Array(3 * width * height);
  for (let k = 0; k < width * height; k++) {
    const third = Math.floor((k % width) / 100);
    rgb.fill([225, 254, 4][third], 3 * k, 3 * k + 3);
  }
  const frame = { width, height, pxPerMm: 10, originMm: [5, 5] as const, baseMm: { width: 30, height: 10 } };
  return { ...frame, rgb, toPhoto: [1, 0, 0, 0, 1, 0, 0, 0, 1] as const, photoPxPerMm: 10 };
}

it('a picture shows nothing where it is burnt out or black, nor is anything said beyond it', () => {
  const blind = blindMap(sheet());
  expect(isBlind({ blind }, [10, 10])).toBe(false);
  expect(isBlind({ blind }, [20, 10])).toBe(true);
  expect(isBlind({ blind }, [30, 10])).toBe(true);
  expect(isBlind({ blind }, [100, 10])).toBe(false);
  expect(isBlind({}, [20, 10])).toBe(false);
});
