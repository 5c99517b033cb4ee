import { basename } from 'node:path';
import { cardSchema } from '../card/index.ts';
import type { Card, CardPhoto } from '../card/index.ts';
import { check } from '../check/index.ts';
import type { Checked, SheetPhoto, ShotFate, StageName } from '../check/index.ts';
import type { Scale } from '../parts/scale/index.ts';
import { decodePhoto } from '../photo/decodeNode.ts';
import { checkJson } from '../record/index.ts';
import type { CheckJson, Paper } from '../record/index.ts';
import { cliWords } from '../words/cli.ts';
import type { SheetFile } from './cardPhotos.ts';
import { copperWords } from '../words/copper.ts';
import { labelsOf, type LabelsJson } from './labels.ts';
import type { Outputs } from './outputNames.ts';
import { writeOutputs } from './writeOutputs.ts';

/** One photograph to check. */
export interface Job {
  photo: string;
  /** A second shot of the same sheet, the lamp or the camera moved. */
  again?: string;
  /** Photographs of the card's other sheets. */
  sheets?: SheetFile[];
  card?: Card;
  /** What the card says of the photograph, where it names it. */
  base?: CardPhoto;
  /** Reads what is written on the sheet too. */
  labels?: boolean;
  outputs: Outputs;
  /** Paper of a record that is written as a PDF; A4 unless given. */
  paper?: Paper;
}

/** What the check of one photograph ends with. */
export interface Answer {
  photo: string;
  /** 0 clear, 1 findings that hold, 2 could not check. */
  status: 0 | 1 | 2;
  json?: CheckJson & {
    outline_certainty: number;
    readable: number;
    shots?: ShotJson[];
    scale?: ScaleJson;
    labels?: LabelsJson;
  };
  /** Why it could not be checked. */
  why?: string;
}

/** Checks one photograph and writes what is asked for. Never throws: the reason is in the answer. */
export async function runJob(job: Job, onStage?: (stage: StageName) => void): Promise<Answer> {
  try {
    onStage?.('decode');
    const begun = performance.now();
    const photo = await decodePhoto(job.photo);
    const again = job.again === undefined ? [] : [await decodePhoto(job.again)];
    const sheets: SheetPhoto[] = [];
    for (const { path, given } of job.sheets ?? []) sheets.push({ given, photo: await decodePhoto(path) });
    const decode = performance.now() - begun;
    const named = { ...photo, name: job.photo };
    const checked = await check(named, job.card ?? bareCard(photo), { onStage }, again, sheets);
    checked.timingsMs.decode = decode;
    await writeOutputs(checked, job);
    const answer = answerOf(job.photo, checked);
    if (job.labels && answer.json) answer.json.labels = await labelsOf(checked);
    return answer;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { photo: job.photo, status: 2, why };
  }
}

/** Without a card the base counts as A6 (ISO 216), lying as the picture does. */
function bareCard({ width, height }: { width: number; height: number }): Card {
  const [width_mm, height_mm] = width > height ? [148, 105] : [105, 148];
  return cardSchema.parse({ format: 'foilproof/1', base: { width_mm, height_mm } });
}

/** What a check of one photograph tells at the terminal. */
export function answerOf(photo: string, checked: Checked): Answer {
  const base = checkJson(checked, checked.power);
  const json = {
    ...base,
    not_seen: [...checked.mask.troubles.map((key) => copperWords.troubles[key]), ...base.not_seen],
    outline_certainty: Number(checked.outline.certainty.toFixed(3)),
    readable: Number(checked.mask.readable.toFixed(3)),
    ...scaleOf(checked),
    ...(checked.shots.length > 0 ? { shots: checked.shots.map(shotJson) } : {}),
  };
  const why = whyNot(checked);
  if (why) return { photo, status: 2, json, why };
  return { photo, status: checked.verdict === 'hold' ? 1 : 0, json };
}

type ScaleJson = { [by in `${Scale}_mm`]?: number } & { ratio: number; agrees: boolean; say?: string };

/** How the scale agrees with the cell's known diameter, or with the tape's width or the lamps' distances that the card states. */
function scaleOf({ scale }: Checked): { scale?: ScaleJson } {
  if (!scale) return {};
  const { by, seenMm, ratio, agrees, say } = scale;
  return {
    scale: {
      [`${by}_mm`]: round(seenMm) ?? 0,
      ratio: round(ratio) ?? 0,
      agrees,
      ...(say ? { say } : {}),
    },
  };
}

type ShotJson = ReturnType<typeof shotJson>;

function shotJson({ name, used, why, movedMm, misfitMm }: ShotFate) {
  const fit = why === 'outline' ? {} : { moved_mm: round(movedMm), misfit_mm: round(misfitMm) };
  return { photo: name, used, ...(why ? { why: copperWords.shotLeftOut[why] } : {}), ...fit };
}

/** Not a number in JSON: a shot that fits nowhere. */
const round = (mm: number) => (Number.isFinite(mm) ? Number(mm.toFixed(3)) : null);

/** A check that rests on a guess is no check. */
function whyNot({ photo, outline, mask, scale }: Checked): string | undefined {
  const name = basename(photo.name);
  if (outline.certainty < 0.5) {
    const unsure = cliWords.outlineUnsure(name, outline.certainty.toFixed(2));
    return scale?.say ? `${scale.say} ${unsure}` : unsure;
  }
  if (mask.readable < 0.5)
    return cliWords.unreadable(name, mask.troubles.map((key) => copperWords.troubles[key]).join(' '));
  return undefined;
}
