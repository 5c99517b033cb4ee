import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { z } from 'zod';
import { findingKinds } from '../../../src/card/index.ts';
import { examine, type Mode } from '../../exam/examine.ts';
import { namesIn, readEntry } from '../../exam/readSet.ts';

const rowSchema = z.object({
  name: z.string(),
  mode: z.string(),
  readable: z.number().optional(),
  outline: z.object({ certainty: z.number() }).optional(),
  findings: z
    .object({
      judged: z.array(
        z.object({
          kind: z.enum(findingKinds),
          certainty: z.number(),
          right: z.boolean(),
          evidence: z.object({ by: z.string(), value: z.number() }).optional(),
        }),
      ),
    })
    .optional(),
});
export const rowsSchema = z.object({ rows: z.array(rowSchema) });

/** A finding that was said of a photograph with truth, and whether it was right. */
export interface Example {
  photo: string;
  kind: (typeof findingKinds)[number];
  by: string;
  evidence: number;
  /** As the shipped curves had it. */
  certainty: number;
  right: boolean;
  weight: number;
}

/** No truth says which copper lies under the cell: cards of some sets lay both strips there, which would short it. */
const unjudged: Example['kind'][] = ['shorted-cell'];

/**
 * Findings of a set: a folder of photographs with truth, which is checked, or the rows of an earlier run over one.
 * @param weight of each photograph's findings; those of both modes share it
 * @param out folder for the rows of what is checked here, so that a fit can be made again without
 */
export async function examplesOf(set: string, weight: number, out: string): Promise<Example[]> {
  const rows = set.endsWith('.json') ? await readRows(set) : await checkAll(set, out);
  const modes = (name: string) => rows.filter((row) => row.name === name && isRead(row)).length;
  return rows.filter(isRead).flatMap(({ name, findings }) =>
    judgedOf(findings).map(({ kind, certainty, right, evidence }) => ({
      photo: `${basename(set)}/${name}`,
      kind,
      by: evidence?.by ?? '',
      evidence: evidence?.value ?? certainty,
      certainty,
      right,
      weight: weight / modes(name),
    })),
  );
}

type Row = z.infer<typeof rowSchema>;

/** Of a photograph that cannot be read, or whose base is not found for sure, the check says so, and no finding counts. */
function isRead({ readable = 1, outline, findings }: Row): boolean {
  return readable >= 0.5 && (outline?.certainty ?? 1) >= 0.5 && findings !== undefined;
}

function judgedOf(findings: Row['findings']) {
  return (findings?.judged ?? []).filter(({ kind }) => !unjudged.includes(kind));
}

async function readRows(file: string): Promise<Row[]> {
  return rowsSchema.parse(JSON.parse(await readFile(file, 'utf8'))).rows;
}

/** Path-traced photographs are few: they are checked with their own and with the true corners. */
async function checkAll(folder: string, out: string): Promise<Row[]> {
  const rows: Row[] = [];
  for (const name of await namesIn(folder)) {
    const entry = await readEntry(folder, name);
    const modes: Mode[] = entry.seams ? ['own outline', 'true corners'] : ['own outline'];
    for (const mode of modes) rows.push((await examine(entry, mode)).row);
    process.stderr.write(`${name}\n`);
  }
  await mkdir(out, { recursive: true });
  await writeFile(join(out, `rows-${basename(folder)}.json`), JSON.stringify({ rows }));
  return rows;
}
