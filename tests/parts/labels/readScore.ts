import { cutLamps } from '../../../src/check/cutLamps.ts';
import { learnedOr } from '../../../src/check/learnedOr.ts';
import { readSheet } from '../../../src/check/labels/index.ts';
import type { Card } from '../../../src/card/index.ts';
import { seeCopper } from '../../../src/copper/index.ts';
import type { LineReader } from '../../../src/engine/ocr.ts';
import type { Quad } from '../../../src/geometry/index.ts';
import { attachLabels } from '../../../src/parts/labels/index.ts';
import { decodePhoto } from '../../../src/photo/decodeNode.ts';
import { sheetTag } from '../../../src/plan/index.ts';
import { squareUp, turnCorners } from '../../../src/sheet/index.ts';
import { drawConditions } from '../../generate/conditions.ts';
import type { printedNight } from '../../generate/printed.ts';
import { randomFrom } from '../../generate/random.ts';
import { render } from '../../generate/render.ts';

/** The printed sheet as photographed: 150 dots an inch at the middle of the paper. */
const pxPerMm = 150 / 25.4;

/** Names of the lamps in the order of the build's; those between the rails have room for two signs. */
export const nameSets = [
  ['B1', 'B2', 'B3', 'B4', 'B5', 'W1', 'W2', 'W3'],
  ['L1', 'L2', 'L3', 'L4', 'L5', 'L6', 'L7', 'L8'],
  ['L9', 'L10', 'L11', 'L12', 'L13', 'D6', 'D7', 'D16'],
  ['B1', 'B2', 'B3', 'B4', 'B5', 'H6', 'H7', 'H8'],
];

export interface Read {
  /** Lamp names and the tag: read right, of how many. */
  right: number;
  of: number;
  tagRight: boolean;
  /** Names and + signs that would be taken for a lamp that they do not belong to. */
  wrong: string[];
  upsideDown: boolean;
}

interface Asked {
  /** Camera's tilt, degrees. */
  tiltDeg: number;
  seed: number;
  upsideDown?: boolean;
  /** The trained nets see the copper too, as they do in a whole check. */
  learned?: boolean;
}

/** Photographs a printed build, squares it up by its true corners and reads it. */
export async function readOnce(
  { build, card }: Awaited<ReturnType<typeof printedNight>>,
  { tiltDeg, seed, upsideDown = false, learned = false }: Asked,
  reader: LineReader,
): Promise<Read> {
  const random = randomFrom(seed);
  const drawn = { width: 1000, height: 1300, pxPerMm, tiltDeg, rollDeg: random.between(-9, 9) };
  const { jpeg, truth } = await render(build, drawConditions(random, drawn), seed, 'printed.jpg');
  const photo = await decodePhoto(jpeg, 'printed.jpg');
  const corners = truth.base.corners_px as unknown as Quad;
  const base = { width: card.base.width_mm, height: card.base.height_mm };
  const sheet = squareUp(photo, upsideDown ? turnCorners(corners, 2) : corners, base, {
    k1: truth.camera.k1,
  });
  const seen = seeCopper(sheet, { learned: learned ? (await learnedOr(undefined, sheet)).map : undefined });
  // Where the sheet lies the other way up nobody has laid parts on it yet.
  const given: Card = upsideDown ? { ...card, lamps: [], cell: undefined, contacts: [] } : card;
  const checked = { sheet, seen: cutLamps(seen, given), suggested: { lamps: [] } };
  const read = await readSheet(checked, given, reader);
  const names = new Set(read.labels.flatMap(({ means }) => (means.kind === 'lamp' ? [means.id] : [])));
  const tags = read.labels.flatMap(({ means }) => (means.kind === 'tag' ? [means.code] : []));
  const tagRight = tags.length === 1 && tags[0] === sheetTag(card);
  return {
    right: card.lamps.filter(({ id }) => names.has(id)).length + (tagRight ? 1 : 0),
    of: card.lamps.length + 1,
    tagRight,
    wrong: wrongOf(read.labels, given),
    upsideDown: read.upsideDown,
  };
}

/** The card has each lamp under its printed name, and its + where the + is printed: whatever would change that is wrong. */
function wrongOf(labels: Parameters<typeof attachLabels>[0], card: Card): string[] {
  return attachLabels(labels, card).flatMap((each) => {
    if (each.do === 'name-lamp' && each.lamp !== each.as) return [`${each.lamp} as ${each.as}`];
    if (each.do === 'mark-plus' && !each.agrees) return [`+ of ${each.lamp}`];
    return [];
  });
}
