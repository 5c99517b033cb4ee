import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { brushCopper, tapCopper } from './cases/copper.ts';
import { cameraCases } from './cases/camera.ts';
import { classroomCases } from './cases/classroom.ts';
import { firstPaint } from './cases/firstPaint.ts';
import { handCases } from './cases/hands.ts';
import { keepCases } from './cases/keep.ts';
import { foldFlaps } from './cases/fold.ts';
import { keyboardAlone } from './cases/keyboard.ts';
import { compareBuild, drawPlan } from './cases/plan.ts';
import { readLabelsCase } from './cases/labels.ts';
import { layParts } from './cases/parts.ts';
import { offlineCases } from './cases/offline.ts';
import { policyCases } from './cases/policy.ts';
import { tellPower } from './cases/power.ts';
import { readVerdict } from './cases/verdict.ts';
import { recordCases } from './cases/record.ts';
import { shareCases } from './cases/share.ts';
import { everySize } from './cases/sizes.ts';
import { dragCorners } from './cases/square.ts';
import { wrongFiles } from './cases/wrongFiles.ts';
import { phone, setStage, visitor, type Stage } from './stage.ts';

/** The real page in a real browser. One build, one server, one browser; the cases follow a maker's way. */
let stage: Stage;
let page: Page;
/** A page at a phone's size, shared by the cases that need no fresh one: each start of the engine takes seconds. */
let handset: Page;

beforeAll(async () => {
  stage = await setStage();
  page = await (await visitor(stage)).newPage();
  handset = await (await visitor(stage, phone)).newPage();
}, 240_000);

afterAll(() => stage?.close());

const bench = () => ({ stage, page, handset });
export type Bench = ReturnType<typeof bench>;

describe('the page', { timeout: 240_000 }, () => {
  firstPaint(bench);
  policyCases(bench);
  offlineCases(bench);
  wrongFiles(bench);
  keyboardAlone(bench);
  readVerdict(bench);
  drawPlan(bench);
  compareBuild(bench);
  layParts(bench);
  readLabelsCase(bench);
  tellPower(bench);
  brushCopper(bench);
  tapCopper(bench);
  dragCorners(bench);
  recordCases(bench);
  shareCases(bench);
  foldFlaps(bench);
  classroomCases(bench);
  keepCases(bench);
  everySize(bench);
  cameraCases(bench);
  handCases(bench);
  test('complains of nothing and asks no other origin for anything', () => {
    expect(stage.complaints).toEqual([]);
  });
});
