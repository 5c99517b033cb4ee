import { existsSync } from 'node:fs';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { decodePhoto } from '../photo/decodeNode.ts';
import type { ComparedMasks, ConductorSide, MaskFault, ReadConductor } from '../plan/index.ts';
import { compareMasks, readConductor } from '../plan/index.ts';
import { lengthFigure, unitSign } from '../words/lengths.ts';
import { decimal } from '../words/numbers.ts';
import { planWords } from '../words/plan.ts';
import { FoilproofError } from '../words/index.ts';

/** Room round a fault's own box in the output, px, so that a cut-out shows what it lies in. */
const BOX_MARGIN_PX = 10;
const HOLDS = new Set(['open', 'short', 'missing']);

interface Asked {
  built: string;
  plan: string;
  pxPerMm?: number;
  tolerancePx?: number;
  side?: ConductorSide;
  json: boolean;
}

/**
 * `foilproof compare`: two masks, two-valued drawings or squared pictures, topology compared.
 * @param args what follows the word compare
 * @returns the exit status: 0 same nets, 1 an open, a short or a missing part
 * @throws FoilproofError where the files cannot be compared (exit status 2)
 */
export async function compareCommand(
  args: string[],
  print: (line: string) => void = console.log,
): Promise<number> {
  const asked = parse(args);
  const built = readConductor(await load(asked.built), asked.side, asked.pxPerMm);
  const plan = readConductor(await load(asked.plan), asked.side, asked.pxPerMm);
  const ratio = (built.bitmap.width * plan.bitmap.height) / (built.bitmap.height * plan.bitmap.width);
  const scale = built.bitmap.width / plan.bitmap.width;
  if (ratio < 0.8 || ratio > 1.25 || scale < 0.8 || scale > 1.25) {
    throw new FoilproofError(planWords.tooUnlike(basename(asked.built), basename(asked.plan)));
  }
  const compared = compareMasks(built.bitmap, plan.bitmap, { tolerancePx: asked.tolerancePx });
  if (asked.json) print(JSON.stringify(asJson(asked, built, plan, compared)));
  else for (const line of asText(asked, built, plan, compared)) print(line);
  return compared.faults.some((f) => HOLDS.has(f.kind)) ? 1 : 0;
}

function parse(args: string[]): Asked {
  const { values, tokens } = parseArgs({
    args,
    strict: false,
    tokens: true,
    options: {
      built: { type: 'string' },
      plan: { type: 'string' },
      'px-per-mm': { type: 'string' },
      'tolerance-px': { type: 'string' },
      conductor: { type: 'string' },
      json: { type: 'boolean' },
    },
  });
  const known = new Set(['built', 'plan', 'px-per-mm', 'tolerance-px', 'conductor', 'json']);
  for (const token of tokens) {
    if (token.kind === 'positional') throw new FoilproofError(planWords.unknownOption(token.value));
    if (token.kind === 'option' && !known.has(token.name))
      throw new FoilproofError(planWords.unknownOption(token.rawName));
  }
  return {
    built: needed(values.built, 'built'),
    plan: needed(values.plan, 'plan'),
    pxPerMm: positive(values['px-per-mm'], 'px-per-mm'),
    tolerancePx: positive(values['tolerance-px'], 'tolerance-px'),
    side: sideOf(values.conductor),
    json: values.json === true,
  };
}

function needed(value: unknown, option: string): string {
  if (typeof value !== 'string' || !value) throw new FoilproofError(planWords.compareNeeds(option));
  return value;
}

function positive(value: unknown, option: string): number | undefined {
  if (value === undefined) return undefined;
  const n = Number(value);
  if (!(n > 0) || !Number.isFinite(n)) throw new FoilproofError(planWords.notPositive(option, String(value)));
  return n;
}

function sideOf(value: unknown): ConductorSide | undefined {
  if (value === undefined || value === 'dark' || value === 'light' || value === 'copper') return value;
  throw new FoilproofError(planWords.notASide(String(value)));
}

async function load(path: string) {
  if (!existsSync(path)) throw new FoilproofError(planWords.noFile(path));
  return decodePhoto(path);
}

function asJson(asked: Asked, built: ReadConductor, plan: ReadConductor, compared: ComparedMasks) {
  const { pxPerMm } = asked;
  const { width, height } = built.bitmap;
  return {
    built: asked.built,
    plan: asked.plan,
    conductor: { built: built.side, plan: plan.side, guessed: built.guessed },
    verdict: compared.faults.some((f) => HOLDS.has(f.kind)) ? 'hold' : 'clear',
    shift_px: [compared.shift.dx, compared.shift.dy],
    swell_px: compared.swellPx,
    parts: compared.parts,
    faults: compared.faults.map((fault) => ({
      kind: fault.kind,
      x_px: fault.at.x,
      y_px: fault.at.y,
      ...(pxPerMm && { x_mm: round(fault.at.x / pxPerMm), y_mm: round(fault.at.y / pxPerMm) }),
      box_px: boxWithMargin(fault, width, height),
      core_px: [fault.box.x0, fault.box.y0, fault.box.x1, fault.box.y1],
      area_px: fault.areaPx,
      changes_net: fault.changesNet,
    })),
  };
}

function boxWithMargin({ box }: MaskFault, width: number, height: number): number[] {
  const m = BOX_MARGIN_PX;
  return [
    Math.max(0, box.x0 - m),
    Math.max(0, box.y0 - m),
    Math.min(width, box.x1 + m),
    Math.min(height, box.y1 + m),
  ];
}

function asText(
  asked: Asked,
  built: ReadConductor,
  plan: ReadConductor,
  { faults }: ComparedMasks,
): string[] {
  const { pxPerMm } = asked;
  const name = pxPerMm ? unitSign() : 'px';
  const said = (px: number) => (pxPerMm ? lengthFigure(px / pxPerMm, 2) : decimal(px, 0));
  const count = (kind: string) => faults.filter((f) => f.kind === kind).length;
  const holds = faults.some((f) => HOLDS.has(f.kind));
  return [
    planWords.conductorSaid(basename(asked.built), built.side, built.guessed),
    planWords.conductorSaid(basename(asked.plan), plan.side, plan.guessed),
    ...faults.map((f) => {
      const size = `${said(f.box.x1 - f.box.x0)} x ${said(f.box.y1 - f.box.y0)} ${name}`;
      return planWords.maskFaultLine(f.kind, said(f.at.x), `${said(f.at.y)} ${name}`, size, f.changesNet);
    }),
    holds ? planWords.compareHolds(count('open'), count('short'), count('missing')) : planWords.compareClear,
  ];
}

const round = (v: number) => Math.round(v * 100) / 100;
