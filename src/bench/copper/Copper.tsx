import { useRef, useState } from 'react';
import type { TouchUp } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { Sheet } from '../page/Sheet.tsx';
import { UndoLine } from '../page/UndoLine.tsx';
import { editCard } from '../state/editCard.ts';
import { bench, useBench } from '../state/store.ts';
import { SquaredSurface } from '../surface/SquaredSurface.tsx';
import type { Tool } from '../surface/tool.ts';
import './copper.css';
import { CopperLines } from './CopperLines.tsx';
import { StrokeMark, TeachMarks } from './marks.tsx';
import { mostTaps, ToolChoice, type CopperTool } from './ToolChoice.tsx';

/** The seen copper over the photograph: mended by taps and by a brush. */
export default function Copper() {
  const shown = useBench((state) => state.shown);
  const taps = useBench(({ card }) => card.teach);
  const [tool, setTool] = useState<CopperTool>('look');
  const [width, setWidth] = useState(3);
  const [veil, setVeil] = useState(0.85);
  const [draft, setDraft] = useState<TouchUp>();
  const drawn = useRef<TouchUp>(undefined);
  if (!shown) return null;
  const show = (stroke: TouchUp | undefined) => {
    drawn.current = stroke;
    setDraft(stroke);
  };
  const lay = (stroke: TouchUp) => editCard((card) => ({ ...card, touch_up: [...card.touch_up, stroke] }));
  const begin = (at: Point): TouchUp => ({
    do: tool === 'add' ? 'add' : 'remove',
    width_mm: width,
    path: [pair(at)],
  });
  const brush: Tool = {
    tap: (at) => lay(begin(at)),
    grab: (at) => {
      show(begin(at));
      return {
        move: (to) => drawn.current && show({ ...drawn.current, path: [...drawn.current.path, pair(to)] }),
        end: () => {
          if (drawn.current) lay(drawn.current);
          show(undefined);
        },
        cancel: () => show(undefined),
      };
    },
  };
  const hands: Record<CopperTool, Tool> = {
    look: {},
    tape: { tap: (at) => teach('copper', at) },
    paper: { tap: (at) => teach('paper', at) },
    add: brush,
    remove: brush,
  };
  return (
    <Sheet
      withTools
      heading={words.copper.heading}
      sheet={
        <SquaredSurface
          shown={shown}
          label={words.copper.sheetLabel}
          copper={veil}
          tool={hands[tool]}
          holdsFinger={tool === 'add' || tool === 'remove'}
          marks={(view) => (
            <>
              <TeachMarks taps={taps.copper} kind="tape" view={view} />
              <TeachMarks taps={taps.paper} kind="paper" view={view} />
              {draft && <StrokeMark stroke={draft} view={view} />}
            </>
          )}
        />
      }
    >
      <ToolChoice
        tool={tool}
        setTool={setTool}
        width={width}
        setWidth={setWidth}
        veil={veil}
        setVeil={setVeil}
      />
      <UndoLine />
      <p className="pencil">{words.copper.lead}</p>
      <CopperLines shown={shown} />
    </Sheet>
  );
}

function teach(kind: 'copper' | 'paper', at: Point): void {
  if (bench().card.teach[kind].length >= mostTaps) return;
  editCard((card) => ({ ...card, teach: { ...card.teach, [kind]: [...card.teach[kind], pair(at)] } }));
}

/** A place rounded to a hundredth of a mm, so that card files stay short. */
function pair([x, y]: Point): [number, number] {
  return [Math.round(x * 100) / 100, Math.round(y * 100) / 100];
}
