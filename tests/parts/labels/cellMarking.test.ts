import { afterAll, beforeAll, expect, test } from 'vitest';
import { cardSchema, type Card } from '../../../src/card/index.ts';
import { sortProposals, takeCell } from '../../../src/bench/labels/labelEdits.ts';
import { cellFace } from '../../../src/check/labels/cellFace.ts';
import { openLineReader, type LineReader } from '../../../src/engine/ocr.ts';
import { readerPlacesNode } from '../../../src/engine/ocrPlacesNode.ts';
import type { Quad } from '../../../src/geometry/index.ts';
import { attachLabels, readCellMarking } from '../../../src/parts/labels/index.ts';
import { decodePhoto } from '../../../src/photo/decodeNode.ts';
import { squareUp, type SquaredSheet } from '../../../src/sheet/index.ts';
import { drawConditions } from '../../generate/conditions.ts';
import { harbourNight } from '../../generate/harbourNight.ts';
import { randomFrom } from '../../generate/random.ts';
import { render } from '../../generate/render.ts';

/** A photograph with a CR2025 in the nest, its marking askew, on a card that says CR2032. */
let reader: LineReader;
let sheet: SquaredSheet;
let card: Card;

beforeAll(async () => {
  reader = await openLineReader(readerPlacesNode());
  const build = harbourNight();
  const marking = { text: 'CR2025', turnDeg: 149, capitalMm: 2.6, how: 'printed' } as const;
  const marked = { ...build, cell: { ...build.cell, present: true, marking } };
  const conditions = drawConditions(randomFrom(31), { width: 1000, height: 1300, pxPerMm: 7.5, tiltDeg: 4 });
  const { jpeg, truth } = await render(marked, conditions, 31, 'marked.jpg');
  const photo = await decodePhoto(jpeg, 'marked.jpg');
  card = cardSchema.parse(build.card);
  const { width_mm: width, height_mm: height } = card.base;
  sheet = squareUp(photo, truth.base.corners_px as unknown as Quad, { width, height });
}, 120_000);

afterAll(() => reader?.close());

test('the type on a cell’s face is read however the cell lies, and proposed, not entered', async () => {
  const face = cellFace(card, { lamps: [] });
  const label = await readCellMarking(sheet, face!.disc, reader, face!.fits);
  expect(label?.means).toEqual({ kind: 'cell', cell: 'CR2025', onFace: true });
  expect(label?.certainty).toBeGreaterThan(0.6);
  const { open } = sortProposals(attachLabels([label!], card), card);
  expect(open).toMatchObject([{ do: 'set-cell', kind: 'CR2025', onFace: true }]);
}, 60_000);

test('where no cell lies nothing is read, and a kind of another diameter is not proposed', async () => {
  const bare = { at: [60, 70], diameterMm: 20 } as const;
  expect(await readCellMarking(sheet, bare, reader)).toBeUndefined();
  const other = await readCellMarking(sheet, { at: card.cell!.at, diameterMm: 20 }, reader, ['CR1620']);
  expect(other).toBeUndefined();
}, 60_000);

test('a marking makes the card’s cell of its kind with its + up, or lays one where there is none', () => {
  const label = {
    text: 'CR2025',
    certainty: 0.9,
    at: [26, 132] as const,
    box: { x0: 16, y0: 122, x1: 36, y1: 142 },
    means: { kind: 'cell', cell: 'CR2025', onFace: true } as const,
  };
  const proposal = { do: 'set-cell', kind: 'CR2025', onFace: true, label } as const;
  const turned = { ...card, cell: { ...card.cell!, up: '-' as const } };
  expect(takeCell(turned, proposal).cell).toMatchObject({ kind: 'CR2025', up: '+', at: card.cell!.at });
  const none = { ...card, cell: undefined };
  expect(takeCell(none, proposal).cell).toMatchObject({ kind: 'CR2025', up: '+', at: [26, 132] });
  // Print beside a nest says which kind goes in, not that one lies there.
  expect(takeCell(none, { ...proposal, onFace: false }).cell).toBeUndefined();
});
