import type { benchWords } from './en/bench.ts';
import type { cardWords } from './en/card.ts';
import type { cautionWords } from './en/cautions.ts';
import type { classroomWords } from './en/classroom.ts';
import type { cliWords } from './en/cli.ts';
import type { copperWords } from './en/copper.ts';
import type { findingWords } from './en/findings.ts';
import type { foldWords } from './en/fold.ts';
import type { labelWords } from './en/labels.ts';
import type { learned } from './en/learned.ts';
import type { offlineWords } from './en/offline.ts';
import type { photoWords } from './en/photo.ts';
import type { planWords } from './en/plan.ts';
import type { powerWords } from './en/power.ts';
import type { powerStripWords } from './en/powerStrip.ts';
import type { recordWords } from './en/record.ts';
import type { shareWords } from './en/share.ts';
import type { sheetWords } from './en/sheet.ts';
import type { stateWords } from './en/states.ts';

/** The English words' shape, any text in each place: what another language must fill, key for key. */
export type Worded<T> = T extends (...given: infer Given) => infer Answer
  ? (...given: Given) => Worded<Answer>
  : T extends string
    ? string
    : T extends object
      ? { [Key in keyof T]: Worded<T[Key]> }
      : T;

/** Every sentence a maker reads, by area. English is the measure: a key that another language lacks is a type error. */
export interface Catalogue {
  bench: Worded<typeof benchWords>;
  card: Worded<typeof cardWords>;
  cautions: Worded<typeof cautionWords>;
  classroom: Worded<typeof classroomWords>;
  cli: Worded<typeof cliWords>;
  copper: Worded<typeof copperWords>;
  findings: Worded<typeof findingWords>;
  fold: Worded<typeof foldWords>;
  labels: Worded<typeof labelWords>;
  learned: Worded<typeof learned>;
  offline: Worded<typeof offlineWords>;
  photo: Worded<typeof photoWords>;
  plan: Worded<typeof planWords>;
  power: Worded<typeof powerWords>;
  powerStrip: Worded<typeof powerStripWords>;
  record: Worded<typeof recordWords>;
  share: Worded<typeof shareWords>;
  sheet: Worded<typeof sheetWords>;
  states: Worded<typeof stateWords>;
}
