import type { Card } from '../../card/index.ts';
import type { PowerReport } from '../../power/index.ts';
import { cautionWords } from '../../words/cautions.ts';
import { pixelDensity } from '../../words/density.ts';
import { language } from '../../words/language.ts';
import { length as inUnit } from '../../words/lengths.ts';
import { recordWords as words } from '../../words/record.ts';
import { markedSheet } from '../drawing/markedSheet.ts';
import type { Recordable, RecordImages } from '../types.ts';
import { lampStrips } from './lampStrips.ts';
import { diagram } from '../diagram/diagram.ts';
import { redrawn } from '../drawing/redrawn.ts';
import { findingBlocks } from './findingBlocks.ts';
import { netTable } from './netTable.ts';
import { partsTable } from './partsTable.ts';
import { powerBlocks } from './powerBlocks.ts';
import { stripTables } from './stripTables.ts';
import { stateTable } from './stateTable.ts';
import type { Block, RecordDocument } from './types.ts';

/** Everything on record of one card, in reading order. */
export function recordDocument(
  checked: Recordable,
  power: PowerReport,
  card: Card,
  images: RecordImages = {},
): RecordDocument {
  const title = words.heading(card.title ?? words.untitled);
  return {
    title,
    language: language(),
    blocks: [
      { kind: 'heading', level: 1, text: title },
      verdictBlock(checked),
      ...aboutBlocks(checked, card),
      { kind: 'heading', level: 2, text: words.sections.sheet },
      figure(checked, images),
      ...findingBlocks(checked, card, images.squared),
      ...drawingBlocks(checked, card),
      ...stateTable(power),
      ...lampStrips(power, card),
      ...powerBlocks(power),
      ...netTable(checked),
      ...partsTable(card),
      ...stripTables(checked, card),
      ...stepBlocks(images),
      ...notSeenBlocks(checked),
      ...cautionBlocks(),
    ],
  };
}

function verdictBlock({ verdict, netlist }: Recordable): Block {
  const count = (weight: string) =>
    netlist.findings.filter((finding) => finding.weight === weight && !finding.checked).length;
  const text =
    verdict === 'clear'
      ? words.verdict.clear
      : verdict === 'hold'
        ? words.verdict.hold(count('holds'))
        : words.verdict['clear-once-checked'](count('check'));
  return { kind: 'verdict', text, hold: verdict === 'hold' };
}

function aboutBlocks({ photo, sheet, traced }: Recordable, card: Card): Block[] {
  const width = inUnit(card.base.width_mm);
  const height = inUnit(card.base.height_mm);
  const gap = inUnit(traced.smallestGapMm);
  const blocks: Block[] = [
    { kind: 'para', text: words.madeFrom(photo.name.replace(/^.*[\\/]/, ''), width, height) },
    { kind: 'para', text: words.readAt(pixelDensity(sheet.photoPxPerMm), gap), small: true },
  ];
  if (card.note) blocks.push({ kind: 'para', text: `${words.sections.note}: ${card.note}` });
  return blocks;
}

function figure(checked: Recordable, images: RecordImages): Block {
  const drawing = markedSheet(checked, images.squared);
  return { kind: 'figure', drawing, caption: drawing.title };
}

function drawingBlocks(checked: Recordable, card: Card): Block[] {
  const scaled = redrawn(checked, card);
  const symbols = diagram(card, checked.netlist);
  const widthMm = scaled.box.x1 - scaled.box.x0;
  const figures: Block[] = [
    { kind: 'heading', level: 2, text: words.sections.redrawn },
    { kind: 'figure', drawing: scaled, caption: scaled.title, widthMm },
  ];
  if (!symbols) return figures;
  return [
    ...figures,
    { kind: 'heading', level: 2, text: words.sections.diagram },
    { kind: 'figure', drawing: symbols, caption: symbols.title, widthMm: symbols.box.x1 - symbols.box.x0 },
  ];
}

function stepBlocks({ steps = [] }: RecordImages): Block[] {
  if (steps.length === 0) return [];
  const figures = steps.map(({ name, step = '', taken = '', image }): Block => {
    const caption = words.step(name, step, taken);
    const box = { x0: 0, y0: 0, x1: 120, y1: (120 * image.height) / image.width };
    return {
      kind: 'figure',
      drawing: { title: caption, box, shapes: [{ kind: 'image', box, image }] },
      caption,
      widthMm: 120,
    };
  });
  return [{ kind: 'heading', level: 2, text: words.sections.steps }, ...figures];
}

function notSeenBlocks({ netlist }: Recordable): Block[] {
  const heading: Block = { kind: 'heading', level: 2, text: words.sections.notSeen };
  if (netlist.notSeen.length === 0) return [heading, { kind: 'para', text: words.nothingUnseen }];
  return [heading, { kind: 'list', items: netlist.notSeen }];
}

function cautionBlocks(): Block[] {
  return [
    { kind: 'heading', level: 2, text: cautionWords.heading },
    { kind: 'para', text: cautionWords.defer },
    { kind: 'cautions', items: cautionWords.items.map(({ title, text }) => ({ title, text })) },
  ];
}
