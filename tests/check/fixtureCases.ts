import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { cardSchema } from '../../src/card/index.ts';
import type { FindingKind } from '../../src/card/index.ts';
import { check } from '../../src/check/index.ts';
import type { Checked } from '../../src/check/index.ts';
import { holds } from '../../src/net/index.ts';
import type { Finding } from '../../src/net/index.ts';
import { decodePhoto } from '../../src/photo/decodeNode.ts';
import { catalogue } from '../generate/catalogue.ts';
import type { Entry } from '../generate/catalogue.ts';

const fixtures = new URL('../../fixtures/', import.meta.url);
/** The brief's tolerance of place, mm. */
const toleranceMm = 3;

/** Findings that follow from a planted fault and may be told beside it. */
const follows: Partial<Record<FindingKind, FindingKind[]>> = {
  bridge: ['shorted-cell', 'lamp-on-one-strip'],
  'shorted-cell': ['bridge', 'extra-strip'],
  'missing-strip': ['unfed-lamp'],
};

export interface Judged {
  checked: Checked;
  /** Planted kinds that hold or ask for a check, not found within the tolerance. */
  missed: FindingKind[];
  /** Findings that hold and that nothing planted explains. */
  falsely: Finding[];
}

export const entries = catalogue().map((e) => [e.name, e] as const);

/** Checks a committed fixture, outline and turn found by itself, and sets it against what was planted. */
export async function judge({ name, build }: Entry): Promise<Judged> {
  const photo = await decodePhoto(fileURLToPath(new URL(`${name}.jpg`, fixtures)));
  const text = await readFile(new URL(`${name}.card.json`, fixtures), 'utf8');
  const checked = await check(photo, cardSchema.parse(JSON.parse(text)));
  const near = (f: Finding, at: readonly [number, number]) =>
    Math.hypot(f.at[0] - at[0], f.at[1] - at[1]) <= toleranceMm;
  const { findings } = checked.netlist;
  const missed = build.planted.filter(
    (p) => !findings.some((f) => isOf(f, p.kind) && (near(f, p.at) || f.lamps.includes(p.lamp ?? ''))),
  );
  const falsely = findings.filter(holds).filter((f) => {
    return !build.planted.some((p) =>
      f.kind === p.kind ? near(f, p.at) || p.kind === 'missing-strip' : follows[p.kind]?.includes(f.kind),
    );
  });
  return { checked, missed: missed.map((p) => p.kind), falsely };
}

/** A short between plus and minus is a bridge and shorts the cell: either name tells it. */
function isOf(finding: Finding, kind: FindingKind): boolean {
  if (finding.kind === kind) return true;
  const short: FindingKind[] = ['bridge', 'shorted-cell'];
  return short.includes(kind) && short.includes(finding.kind);
}
