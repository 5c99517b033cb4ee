import { check } from '../../src/check/index.ts';
import type { CheckOptions, Checked, ShotFate } from '../../src/check/index.ts';
import type { Photo } from '../../src/photo/index.ts';
import { holds } from '../../src/net/index.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';
import type { Outline } from '../../src/sheet/index.ts';
import { compareMask } from './compareMask.ts';
import type { MaskScore } from './compareMask.ts';
import type { Entry } from './entry.ts';
import { scoreFindings } from './findingScore.ts';
import type { FindingScore, Said } from './findingScore.ts';
import { cornerError, frameFromCorners, frameOfSheet } from './frame.ts';
import type { Frame } from './frame.ts';

export type Mode = 'own outline' | 'true corners';

/** What the check made of one photograph, in one mode. */
export interface Row {
  name: string;
  mode: Mode;
  conditions: Record<string, string>;
  error?: string;
  outline?: { certainty: number; mm?: number; turned?: number };
  /** What became of a further shot. */
  shots?: ShotFate[];
  mask?: MaskScore;
  readable?: number;
  verdict?: string;
  by?: string;
  findings?: FindingScore;
  timingsMs?: Record<string, number>;
}

/** Runs the check and scores it. A photograph that could not be checked gives a row with the sentence. */
export async function examine(
  entry: Entry,
  mode: Mode,
  options: CheckOptions = {},
): Promise<{ row: Row; checked?: Checked; photo?: Photo }> {
  const row: Row = { name: entry.name, mode, conditions: entry.conditions };
  try {
    const photo = await decodePhoto(entry.photoPath);
    const again = entry.againPath ? [await decodePhoto(entry.againPath)] : [];
    const checked = await check(photo, entry.card, { ...options, ...outlineFor(entry, mode) }, again);
    return { row: { ...row, ...score(entry, checked) }, checked, photo };
  } catch (e) {
    return { row: { ...row, error: e instanceof Error ? (e.stack ?? e.message) : String(e) } };
  }
}

function outlineFor(entry: Entry, mode: Mode): { outline?: Outline } {
  if (mode === 'own outline' || !entry.cornersPx) return {};
  return { outline: { cornersPx: entry.cornersPx, certainty: 1, k1: entry.k1 ?? 0, residualMm: 0 } };
}

function score(entry: Entry, checked: Checked): Partial<Row> {
  const seen = frameOfSheet(checked.sheet, checked.photo, checked.outline.k1);
  const truth = entry.cornersPx
    ? frameFromCorners(entry.cornersPx, entry.card.base, checked.photo, entry.k1 ?? 0)
    : undefined;
  const corner = truth ? cornerError(checked.outline.cornersPx, truth, entry.card.base) : undefined;
  return {
    outline: { certainty: checked.outline.certainty, mm: corner?.mm, turned: corner?.turned },
    shots: checked.shots,
    mask: compareMask(checked.mask, seen, entry.mask, truth ?? seen, entry.card.base),
    readable: checked.mask.readable,
    by: checked.mask.by,
    verdict: checked.verdict,
    findings: entry.faults ? judge(entry, checked, seen, truth ?? seen) : undefined,
    timingsMs: checked.timingsMs,
  };
}

function judge(entry: Entry, checked: Checked, seen: Frame, truth: Frame): FindingScore {
  const said: Said[] = checked.netlist.findings.map((f) => ({
    kind: f.kind,
    at: truth.toMm(seen.toPx(f.at)),
    certainty: f.certainty,
    holds: holds(f),
    evidence: f.evidence,
  }));
  const seams = entry.seams?.map((s) => ({ kind: 'seam' as const, path: [s] }));
  // Without known seams a seam that is said cannot be judged.
  const judgeable = seams ? said : said.filter((s) => s.kind !== 'seam');
  return scoreFindings(judgeable, [...(entry.faults ?? []), ...(seams ?? [])], entry.excused ?? []);
}
