import { cliWords } from '../words/cli.ts';
import { labelWords } from '../words/labels.ts';
import { findingWords } from '../words/findings.ts';
import { length } from '../words/lengths.ts';
import { decimal } from '../words/numbers.ts';
import type { Answer } from './job.ts';

type Json = NonNullable<Answer['json']>;

/** One photograph's answer for a reader: the verdict, the numbered findings, what was not seen. */
export function fullText({ photo, status, json }: Answer): string[] {
  if (!json) return [];
  const verdict = status === 2 ? cliWords.couldNot : cliWords.verdict[json.verdict];
  return [
    `${photo}: ${verdict}${countOf(json)}`,
    ...json.findings.flatMap((f, i) => [
      `${String(i + 1).padStart(3)}. ${findingWords.names[f.kind]}, ${f.place}, ${cliWords.sure(decimal(f.certainty, 2))}`,
      `     ${f.say}`,
      `     ${f.do}`,
    ]),
    ...(json.scale?.say ? [json.scale.say] : []),
    ...(json.labels ? labelLines(json.labels) : []),
    ...(json.not_seen.length > 0 ? [cliWords.notSeen, ...json.not_seen.map((s) => `   - ${s}`)] : []),
  ];
}

/** What was read off the sheet. */
function labelLines({ upside_down, read }: NonNullable<Json['labels']>): string[] {
  const lines = read.map(
    ({ text, x_mm, y_mm, certainty }) =>
      `   - "${text}" ${findingWords.place(length(x_mm), length(y_mm))}, ${cliWords.sure(decimal(certainty, 2))}`,
  );
  return [cliWords.labels(read.length), ...(upside_down ? [labelWords.upsideDown] : []), ...lines];
}

/** One photograph's answer in one line. */
export function oneLine({ photo, status, json, why }: Answer): string {
  if (!json || status === 2) return `${photo}: ${cliWords.couldNot}${why ? `. ${why}` : ''}`;
  const holding = json.findings
    .filter((f) => f.weight === 'holds' && f.certainty >= 0.5)
    .map((f) => `${findingWords.names[f.kind]}, ${f.place}`);
  const list = holding.length > 0 ? `: ${holding.join('; ')}` : '';
  return `${photo}: ${cliWords.verdict[json.verdict]}${countOf(json)}${list}`;
}

function countOf({ findings }: Json): string {
  const open = findings.filter((f) => f.checked === undefined);
  const of = (weight: string) =>
    open.filter((f) => f.weight === weight && (weight !== 'holds' || f.certainty >= 0.5)).length;
  const counted = cliWords.count(of('holds'), of('check'), of('note'));
  return counted ? ` (${counted})` : '';
}
