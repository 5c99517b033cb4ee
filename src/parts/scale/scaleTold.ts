import type { Card } from '../../card/index.ts';
import type { Traced } from '../../trace/index.ts';
import { length } from '../../words/lengths.ts';
import { sheetWords } from '../../words/sheet.ts';
import { scaleByCell } from '../suggest/scaleByCell.ts';
import type { Suggested } from '../suggest/index.ts';
import { lampSpread } from './lampSpread.ts';
import { tapeWidth } from './tapeWidth.ts';

/** What tells the scale: the cell's circle, the lamps' distances, the tape's width. */
export type Scale = 'cell' | 'lamps' | 'tape';

/** The sheet's scale as something on it tells it whose size the card states. */
export interface ScaleTold {
  by: Scale;
  seenMm: number;
  /** Seen over stated; under 1 the outline takes in more than the base. */
  ratio: number;
  agrees: boolean;
  /** So far off that another figure than the base must have been taken for it. */
  otherFigure: boolean;
  /** Sentence for the maker, where it does not agree. */
  say?: string;
}

/** Beyond these shares the measure tells of another figure; within them it may err by itself, by shadow, glare or a lifted edge. */
const mostOff: Record<Scale, number> = { cell: 0.08, lamps: 0.08, tape: 0.12 };

/**
 * Sets what lies on the sheet against the sizes that the card states. A measure that agrees settles it; of several that do not, the
 * most exact is told.
 * @returns undefined where the card states no size of anything that is seen
 */
export function scaleTold(card: Card, suggested: Suggested, traced: Traced): ScaleTold | undefined {
  const told = [byCell(card, suggested), byLamps(card, suggested), byTape(card, traced)].flatMap(
    (each) => each ?? [],
  );
  const agreeing = told.find(({ agrees }) => agrees);
  const cell = told.find(({ by }) => by === 'cell');
  if (!agreeing) return told[0];
  return cell && !cell.agrees ? { ...cell, otherFigure: false } : agreeing;
}

function byCell(card: Card, suggested: Suggested): ScaleTold | undefined {
  const cell = scaleByCell(card, suggested);
  if (!cell) return undefined;
  const { diameterMm: seenMm, ratio, agrees, say } = cell;
  return { by: 'cell', seenMm, ratio, agrees, otherFigure: isFar('cell', ratio), ...(say ? { say } : {}) };
}

function byLamps(card: Card, suggested: Suggested): ScaleTold | undefined {
  const seen = lampSpread(card, suggested);
  return seen && judged('lamps', seen.seenMm, seen.statedMm);
}

function byTape(card: Card, traced: Traced): ScaleTold | undefined {
  const seen = tapeWidth(card, traced);
  return seen && judged('tape', seen.seenMm, seen.statedMm);
}

function judged(by: 'lamps' | 'tape', seenMm: number, statedMm: number): ScaleTold {
  const ratio = seenMm / statedMm;
  if (!isFar(by, ratio)) return { by, seenMm, ratio, agrees: true, otherFigure: false };
  const percent = Math.abs(100 * (ratio - 1)).toFixed(0);
  const off = { lamps: sheetWords.lampsOff, tape: sheetWords.tapeOff }[by];
  const why = ratio < 1 ? sheetWords.tooLargeTaken : sheetWords.tooSmallTaken;
  const say = `${off(length(seenMm), length(statedMm), percent)} ${why}`;
  return { by, seenMm, ratio, agrees: false, otherFigure: true, say };
}

const isFar = (by: Scale, ratio: number) => Math.abs(Math.log(ratio)) > Math.log(1 + mostOff[by]);
