import type { Card } from '../../card/index.ts';
import type { JoinedSheets, ShotFate, StageName, Verdict } from '../../check/index.ts';
import type { Trouble } from '../../copper/types.ts';
import type { Quad } from '../../geometry/index.ts';
import type { Netlist } from '../../net/index.ts';
import type { ScaleTold } from '../../parts/scale/index.ts';
import type { Suggested } from '../../parts/suggest/index.ts';
import type { PlanComparison } from '../../plan/index.ts';
import type { Outline, SquaredSheet } from '../../sheet/index.ts';
import type { Traced } from '../../trace/index.ts';
import type { Language } from '../../words/language.ts';
import type { ClassCalls } from './classCheck.ts';
import type { PlanCalls } from './planCalls.ts';
import type { SheetRead } from './reading.ts';

/** Stages that the page can ask to have renewed; a part laid anew asks for 'net' only. */
export type RenewableStage = Extract<StageName, 'square' | 'copper' | 'trace' | 'net'>;

/** The squared sheet without its pixels, which stay in the worker. */
export type SheetFrame = Omit<SquaredSheet, 'rgb' | 'seen'>;

/** What a renewal gives; a part is absent where its stage was not renewed. */
export interface Renewed {
  outline: Outline;
  sheet: SheetFrame;
  /** The squared picture. */
  picture?: ImageBitmap;
  /** The copper drawn for laying over the picture, same size. */
  overlay?: ImageBitmap;
  traced?: Traced;
  /** Parts as the photograph shows them, for the maker to accept. */
  suggested: Suggested;
  /** The scale as what lies on the sheet tells it. */
  scale?: ScaleTold;
  netlist: Netlist;
  /** The build against the card's plan, where it has one. */
  compared?: PlanComparison;
  verdict: Verdict;
  timingsMs: Partial<Record<StageName, number>>;
  /** Sentences on sharpness and exposure. */
  cautions: string[];
  /** How well the photograph could be read, 0..1, and what stands in the way. */
  readable: number;
  troubles: Trouble[];
  /** What became of further shots of the same sheet. */
  shots: ShotFate[];
  /** What laying the card's other sheets on the base gave; absent where there are none. */
  joined?: JoinedSheets;
}

/** Every call: what is asked and what is answered. */
export interface Calls extends PlanCalls, ClassCalls {
  warm: { ask: null; answer: null };
  speak: { ask: { language: Language }; answer: null };
  open: { ask: { name: string; file: Blob }; answer: { width: number; height: number } };
  /** Further shots of the open photograph's sheet, in place of those given before. */
  again: { ask: { shots: { name: string; file: Blob }[] }; answer: null };
  /** The base's sides by an ID-1 card lying beside it, mm; null where none is seen. */
  measureByCard: { ask: { corners: Quad }; answer: { width: number; height: number } | null };
  /** What is printed or written on the sheet; runs beside all else. */
  read: { ask: { card: Card }; answer: SheetRead };
  stopReading: { ask: null; answer: null };
  renew: { ask: { from: RenewableStage; card: Card; outline?: Outline }; answer: Renewed };
}

export type CallName = keyof Calls;

export interface Ask<Name extends CallName = CallName> {
  id: number;
  call: Name;
  ask: Calls[Name]['ask'];
}

export type Told =
  | { id: number; is: 'answer'; answer: Calls[CallName]['answer'] }
  | { id: number; is: 'error'; sentence: string; forMaker: boolean }
  | { id: number; is: 'stage'; stage: StageName }
  | { id: number; is: 'share'; share: number };
