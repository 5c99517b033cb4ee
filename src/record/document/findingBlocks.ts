import type { Card } from '../../card/index.ts';
import type { Finding } from '../../net/index.ts';
import { findingWords } from '../../words/findings.ts';
import { recordWords as words } from '../../words/record.ts';
import { cutOut } from '../drawing/markedSheet.ts';
import type { EncodedImage } from '../drawing/types.ts';
import { sayPlace } from '../sayPlace.ts';
import { sayFinding } from '../sayFinding.ts';
import type { Recordable } from '../types.ts';
import type { Block } from './types.ts';

/** The findings in proof order, each with its number on the sheet and how it was or can be settled. */
export function findingBlocks(checked: Recordable, card: Card, squared: EncodedImage | undefined): Block[] {
  const heading: Block = { kind: 'heading', level: 2, text: words.sections.findings };
  const { findings } = checked.netlist;
  if (findings.length === 0) return [heading, { kind: 'para', text: words.noFindings }];
  return [heading, ...findings.map((finding, i) => findingBlock(finding, i + 1, checked, card, squared))];
}

function findingBlock(
  finding: Finding,
  number: number,
  checked: Recordable,
  card: Card,
  squared: EncodedImage | undefined,
): Block {
  const { say, do: todo, settle } = sayFinding(finding);
  const place = sayPlace(finding, card);
  const certainty = words.certainty(Math.round(finding.certainty * 100));
  return {
    kind: 'finding',
    number,
    title: `${findingWords.names[finding.kind]}, ${place}, ${certainty}`,
    say,
    todo,
    settle,
    ...(finding.checked ? { settled: words.settledBy(finding.checked.note) } : {}),
    ...(squared ? { cutOut: cutOut(checked, squared, finding.at, number) } : {}),
  };
}
