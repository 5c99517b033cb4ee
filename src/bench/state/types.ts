import type { Card } from '../../card/index.ts';
import type { StageName } from '../../check/index.ts';
import type { Language } from '../../words/language.ts';
import type { ClassCard } from '../classroom/classroom.ts';
import type { SheetRead } from '../worker/reading.ts';
import type { Renewed } from '../worker/protocol.ts';

export type StepName =
  'classroom' | 'shoot' | 'square' | 'copper' | 'parts' | 'verdict' | 'record' | 'plan' | 'fold';

/** A photograph as the maker gave it. */
export interface KeptShot {
  name: string;
  file: Blob;
  /** ISO date and time at which it came to the page. */
  taken: string;
}

/** A photograph on the bench. */
export interface Shot extends KeptShot {
  width: number;
  height: number;
}

/** What the check has given so far, ready to be shown. */
export type Shown = Renewed & Required<Pick<Renewed, 'picture' | 'overlay' | 'traced'>>;

/** A sentence for the maker, and what can be done about it. */
export interface Notice {
  tone: 'trouble' | 'news';
  text: string;
  acts?: { label: string; act: () => void }[];
}

/** Whether the page works without a network. */
export type Offline = { is: 'fetching'; bytes: number } | { is: 'ready' } | { is: 'newer'; take: () => void };

export interface BenchState {
  step: StepName;
  language: Language;
  cardId: string;
  card: Card;
  /** Cards to go back to, oldest first, and those gone back from. */
  past: Card[];
  future: Card[];
  shot?: Shot;
  /** Further shots of the same sheet. */
  again?: KeptShot[];
  shown?: Shown;
  /** What is under way. */
  busy?: StageName;
  notice?: Notice;
  offline?: Offline;
  /** Many cards of the plan at hand, and whether they are being checked now. */
  classroom: ClassCard[];
  classBusy: boolean;
  engine: { share: number; ready: boolean };
  /** What was read off the sheet, and the picture it was read from; a share 0..1 while it is being read. */
  written?: { read: SheetRead; picture: ImageBitmap };
  reading?: number;
  /** Number of the finding that the maker looks at, from 1. */
  mark?: number;
  /** Id of the part that is selected: a lamp's, a contact's, 'cell'. */
  part?: string;
  /** When the card was last kept on this device, and its revision there. */
  kept?: { at: string; revision: number };
}
