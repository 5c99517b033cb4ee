import { useState } from 'react';
import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { openSuggestions } from '../../parts/suggest/openSuggestions.ts';
import { benchWords as words } from '../../words/bench.ts';
import { Radios } from '../page/Radios.tsx';
import { WrittenLabels } from '../labels/WrittenLabels.tsx';
import { Sheet } from '../page/Sheet.tsx';
import { UndoLine } from '../page/UndoLine.tsx';
import { change, useBench } from '../state/store.ts';
import { SquaredSurface } from '../surface/SquaredSurface.tsx';
import { PartList } from './PartList.tsx';
import { PatchesAndFlaps } from './PatchesAndFlaps.tsx';
import { PartMarks } from './PartMarks.tsx';
import './parts.css';
import { ProposedList } from './ProposedList.tsx';
import { ProposedMarks } from './ProposedMarks.tsx';
import { handOf, type PartTool } from './handOf.ts';

const tools: PartTool[] = ['pick', 'lamp', 'cell', 'contact'];

/** Lamps, cell and contacts laid on the photograph by taps, moved by drags. */
export default function Parts() {
  const shown = useBench((state) => state.shown);
  const card = useBench((state) => state.card);
  const part = useBench((state) => state.part);
  const [tool, setTool] = useState<PartTool>(card.lamps.length > 0 ? 'pick' : 'lamp');
  const [plus, setPlus] = useState<Point>();
  const [draft, setDraft] = useState<Card>();
  if (!shown) return null;
  const proposed = openSuggestions(shown.suggested, draft ?? card);
  const choose = (next: PartTool) => {
    setTool(next);
    setPlus(undefined);
    change({ part: undefined });
  };
  const { parts: text } = words;
  return (
    <Sheet
      withTools
      heading={text.heading}
      sheet={
        <SquaredSurface
          shown={shown}
          label={text.sheetLabel}
          copper={0.35}
          tool={handOf(tool, { plus, setPlus, setDraft, proposed })}
          marks={(view) => (
            <>
              <ProposedMarks proposed={proposed} view={view} />
              <PartMarks card={draft ?? card} view={view} part={part} plus={plus} />
            </>
          )}
        />
      }
    >
      <Radios
        legend={text.tool}
        name="part-tool"
        offered={tools}
        labels={text.tools}
        chosen={tool}
        choose={choose}
      />
      <p className="hint" role="status">
        {tool === 'lamp' && plus ? text.hints.lampMinus : text.hints[tool]}
      </p>
      <UndoLine />
      <ProposedList proposed={proposed} />
      <PartList card={card} part={part} />
      <PatchesAndFlaps card={card} />
      <WrittenLabels shown={shown} card={card} />
    </Sheet>
  );
}
