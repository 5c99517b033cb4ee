import type { Drawing } from '../drawing/types.ts';

/** A record is a flat run of blocks; HTML and PDF are two ways to set the same blocks. */
export type Block =
  | { kind: 'heading'; level: 1 | 2; text: string }
  | { kind: 'para'; text: string; small?: boolean }
  | { kind: 'verdict'; text: string; hold: boolean }
  | { kind: 'list'; items: string[] }
  | { kind: 'table'; caption: string; head: string[]; rows: string[][]; numeric?: boolean[] }
  | { kind: 'figure'; drawing: Drawing; caption: string; widthMm?: number }
  /** A finding: its proof number, what is said, what to do, what settles it, a cut-out of the photograph. */
  | {
      kind: 'finding';
      number: number;
      title: string;
      say: string;
      todo: string;
      settle: string;
      settled?: string;
      cutOut?: Drawing;
    }
  | { kind: 'cautions'; items: { title: string; text: string }[] };

export interface RecordDocument {
  title: string;
  language: string;
  blocks: Block[];
}
