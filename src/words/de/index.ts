import type { Catalogue } from '../catalogue.ts';
import { benchWords } from './bench.ts';
import { cardWords } from './card.ts';
import { cautionWords } from './cautions.ts';
import { classroomWords } from './classroom.ts';
import { cliWords } from './cli.ts';
import { copperWords } from './copper.ts';
import { findingWords } from './findings.ts';
import { foldWords } from './fold.ts';
import { labelWords } from './labels.ts';
import { learned } from './learned.ts';
import { offlineWords } from './offline.ts';
import { photoWords } from './photo.ts';
import { planWords } from './plan.ts';
import { powerWords } from './power.ts';
import { powerStripWords } from './powerStrip.ts';
import { recordWords } from './record.ts';
import { shareWords } from './share.ts';
import { sheetWords } from './sheet.ts';
import { stateWords } from './states.ts';

/** The whole catalogue in German. */
export const german: Catalogue = {
  bench: benchWords,
  card: cardWords,
  cautions: cautionWords,
  classroom: classroomWords,
  cli: cliWords,
  copper: copperWords,
  findings: findingWords,
  fold: foldWords,
  labels: labelWords,
  learned,
  offline: offlineWords,
  photo: photoWords,
  plan: planWords,
  power: powerWords,
  powerStrip: powerStripWords,
  record: recordWords,
  share: shareWords,
  sheet: sheetWords,
  states: stateWords,
};
