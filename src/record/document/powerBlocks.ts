import { sayPower, type PowerReport } from '../../power/index.ts';
import { recordWords as words } from '../../words/record.ts';
import type { Block } from './types.ts';

/** Currents, life and advice in sentences. */
export function powerBlocks(power: PowerReport): Block[] {
  const { tells, advice, joints, lesson } = sayPower(power);
  const list = (title: string, items: string[]): Block[] =>
    items.length === 0
      ? []
      : [
          { kind: 'para', text: `${title}:` },
          { kind: 'list', items },
        ];
  return [
    { kind: 'heading', level: 2, text: words.sections.power },
    { kind: 'list', items: tells },
    ...list(words.power.advice, advice),
    ...list(words.power.joints, joints),
    ...list(words.power.lesson, lesson),
  ];
}
