import { readFileSync, statSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { seeCopperLearned } from '../../src/copper/learned/index.ts';
import type { LearnedCopper } from '../../src/copper/learned/index.ts';
import { openNet } from '../../src/engine/onnx.ts';
import type { Quad } from '../../src/geometry/index.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';
import { squareUp } from '../../src/sheet/index.ts';
import { FoilproofError } from '../../src/words/index.ts';

interface Truth {
  base: { width_mm: number; height_mm: number; corners_px: Quad };
  camera: { k1: number };
  faults: { at: [number, number] }[];
}

/** A photograph that tests/generate drew, by other code than the scenes that the net was trained on. */
async function squared(name: string, kind: '.jpg' | '_mask.png') {
  const folder = new URL('../../fixtures/', import.meta.url);
  const truth = JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8')) as Truth;
  const photo = await decodePhoto(readFileSync(new URL(name + kind, folder)), name);
  const { width_mm: width, height_mm: height, corners_px } = truth.base;
  return { truth, sheet: squareUp(photo, corners_px, { width, height }, { k1: truth.camera.k1 }) };
}

describe('seeCopperLearned', () => {
  let seen: LearnedCopper;
  let copper: Uint8Array;
  let gap: [number, number];
  let width: number;
  beforeAll(async () => {
    const { sheet, truth } = await squared('gap-2.0', '.jpg');
    const mask = await squared('gap-2.0', '_mask.png');
    copper = mask.sheet.rgb.filter((_, k) => k % 3 === 0);
    seen = await seeCopperLearned(sheet);
    [gap, width] = [truth.faults[0].at, sheet.width];
  }, 120_000);

  it('sees the copper of a sheet that other code drew: IoU over 0.92', () => {
    let both = 0;
    let either = 0;
    copper.forEach((t, k) => {
      both += t > 127 && seen.copper[k] > 127 ? 1 : 0;
      either += t > 127 || seen.copper[k] > 127 ? 1 : 0;
    });
    expect(both / either).toBeGreaterThan(0.92);
  });

  it('keeps a cut of 2 mm open from side to side', () => {
    const row = Math.round(gap[1] * 10);
    for (let mm = -1; mm <= 1; mm += 0.2)
      expect(seen.copper[row * width + Math.round((gap[0] + mm) * 10)]).toBeLessThan(128);
  });

  it('calls no cell on a sheet without one', () => {
    const share = seen.cell.reduce((n, v) => n + (v > 127 ? 1 : 0), 0) / seen.cell.length;
    expect(share).toBeLessThan(0.001);
  });
});

it('a sheet at 5 px/mm is read as well as one at 10: IoU of the two over 0.85', async () => {
  const { sheet } = await squared('sound', '.jpg');
  const corner = { ...sheet, height: 320, rgb: sheet.rgb.subarray(0, sheet.width * 320 * 3) };
  const half = { ...corner, width: sheet.width / 2, height: 160, pxPerMm: 5 };
  const rgb = new Uint8Array(half.width * half.height * 3);
  for (let k = 0; k < half.width * half.height; k++) {
    const p = (Math.floor(k / half.width) * 2 * sheet.width + (k % half.width) * 2) * 3;
    for (let c = 0; c < 3; c++)
      rgb[3 * k + c] =
        (corner.rgb[p + c] +
          corner.rgb[p + 3 + c] +
          corner.rgb[p + 3 * sheet.width + c] +
          corner.rgb[p + 3 * sheet.width + 3 + c]) /
        4;
  }
  const fine = await seeCopperLearned(corner);
  const coarse = await seeCopperLearned({ ...half, rgb });
  let both = 0;
  let either = 0;
  coarse.copper.forEach((v, k) => {
    const p = Math.floor(k / half.width) * 2 * sheet.width + (k % half.width) * 2;
    both += v > 127 && fine.copper[p] > 127 ? 1 : 0;
    either += v > 127 || fine.copper[p] > 127 ? 1 : 0;
  });
  expect(both / either).toBeGreaterThan(0.85);
});

it('the weights are small enough to fetch: at most 1.25 MB a net', () => {
  for (const file of ['sheet.onnx', 'base.onnx'])
    expect(statSync(new URL(`../../public/models/${file}`, import.meta.url)).size).toBeLessThan(1.25e6);
});

it('says in a sentence which weights are missing', async () => {
  await expect(openNet('none.onnx')).rejects.toThrow(FoilproofError);
  await expect(openNet('none.onnx')).rejects.toThrow('none.onnx');
});
