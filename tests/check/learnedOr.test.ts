import { expect, test } from 'vitest';
import { learnedOr } from '../../src/check/learnedOr.ts';
import type { SquaredSheet } from '../../src/sheet/index.ts';

const sheet = {} as SquaredSheet;

test('nets that cannot be loaded are told as lost, those not wanted are not', async () => {
  const failing = () => Promise.reject(new Error('no network'));
  expect(await learnedOr(failing, sheet)).toEqual({ lost: true });
  expect(await learnedOr(false, sheet)).toEqual({ lost: false });
  const map = { copper: new Uint8Array(1), lamp: new Uint8Array(1), cell: new Uint8Array(1) };
  expect(await learnedOr(() => Promise.resolve(map), sheet)).toEqual({ map, lost: false });
});
