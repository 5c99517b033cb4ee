import { benchWords } from '../en/bench.ts';
import { cardWords } from '../en/card.ts';
import { cautionWords } from '../en/cautions.ts';
import { classroomWords } from '../en/classroom.ts';
import { cliWords } from '../en/cli.ts';
import { copperWords } from '../en/copper.ts';
import { findingWords } from '../en/findings.ts';
import { foldWords } from '../en/fold.ts';
import { learned } from '../en/learned.ts';
import { offlineWords } from '../en/offline.ts';
import { photoWords } from '../en/photo.ts';
import { planWords } from '../en/plan.ts';
import { powerWords } from '../en/power.ts';
import { powerStripWords } from '../en/powerStrip.ts';
import { recordWords } from '../en/record.ts';
import { shareWords } from '../en/share.ts';
import { sheetWords } from '../en/sheet.ts';
import { stateWords } from '../en/states.ts';
import type { Catalogue } from '../catalogue.ts';

export const german: Catalogue = {
  bench: benchWords,
  card: cardWords,
  cautions: cautionWords,
  classroom: classroomWords,
  cli: cliWords,
  copper: copperWords,
  findings: findingWords,
  fold: foldWords,
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
