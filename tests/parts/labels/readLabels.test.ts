import { afterAll, beforeAll, expect, test } from 'vitest';
import { openLineReader, type LineReader } from '../../../src/engine/ocr.ts';
import { readerPlacesNode } from '../../../src/engine/ocrPlacesNode.ts';
import { long } from '../../long.ts';
import { printedNight } from '../../generate/printed.ts';
import { nameSets, readOnce } from './readScore.ts';

/** The plan as printed, built, photographed and read by a recogniser from the registry; `readRates.ts` asks many more. */
let reader: LineReader;
let printed: Awaited<ReturnType<typeof printedNight>>;

beforeAll(async () => {
  reader = await openLineReader(readerPlacesNode());
  printed = await printedNight(nameSets[3], 0.3);
}, 120_000);

afterAll(() => reader?.close());

test('the tag and nearly all names are read off a photograph at 150 dots an inch, tilted; nothing goes to a wrong lamp', async () => {
  const { right, of, tagRight, wrong } = await readOnce(printed, { tiltDeg: 24, seed: 5001 }, reader);
  expect(tagRight).toBe(true);
  expect(right).toBeGreaterThanOrEqual(of - 1);
  expect(wrong).toEqual([]);
}, 120_000);

test.runIf(long)(
  'a sheet that lies upside down is noticed, and its tag is read all the same',
  async () => {
    const read = await readOnce(printed, { tiltDeg: 8, seed: 5002, upsideDown: true }, reader);
    expect(read.upsideDown).toBe(true);
    expect(read.tagRight).toBe(true);
  },
  120_000,
);
