import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Snapped } from '../../plan/index.ts';
import { planWords } from '../../words/plan.ts';
import { Radios } from '../page/Radios.tsx';
import { artworkOf } from './artworkEdits.ts';
import type { Placing } from './artworkTool.ts';
import type { Draft, PlanTool } from './planTool.ts';

const tools: PlanTool[] = ['pick', 'strip', 'lamp', 'cell', 'contact', 'patch', 'flap', 'artwork'];

interface Props {
  card: Card;
  tool: PlanTool;
  choose(tool: PlanTool): void;
  draft: Draft;
  plus: Point | undefined;
  placing: Placing | undefined;
  settled: Snapped | undefined;
}

/** The tools in words, what the chosen one waits for, and what the last tap settled on. */
export function ToolRow({ card, tool, choose, draft, plus, placing, settled }: Props) {
  const { page: text } = planWords;
  const offered = tools.filter((each) => each !== 'artwork' || artworkOf(card) !== undefined);
  return (
    <>
      <Radios
        legend={text.tool}
        name="plan-tool"
        offered={offered}
        labels={text.tools}
        chosen={tool}
        choose={choose}
      />
      <p className="hint" role="status">
        {hintOf(tool, draft, plus, placing)}
        {tool === 'strip' && settled && settled.by !== 'none' && <small> {settledWords(settled)}</small>}
      </p>
      <p className="only-read">{text.keys}</p>
    </>
  );
}

function hintOf(tool: PlanTool, draft: Draft, plus: Point | undefined, placing: Placing | undefined): string {
  const { hints } = planWords.page;
  if (placing?.by === 'corners') return hints.corners(hints.cornerNames[placing.taps.length]);
  if (placing) return placing.taps.length % 2 ? hints.measureTo : hints.measureFrom;
  if (tool === 'lamp' && plus) return hints.lampMinus;
  if (tool === 'strip' && draft.path.length) return hints.stripOn;
  return hints[tool];
}

function settledWords({ by, to = '' }: Snapped): string {
  const { snapped } = planWords.page;
  return by === 'pad' ? snapped.pad(to) : by === 'spacing' ? snapped.spacing(to) : snapped.angle;
}
