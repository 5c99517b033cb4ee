import { benchWords as words } from '../../words/bench.ts';
import { Radios } from '../page/Radios.tsx';
import { Slider } from '../page/Slider.tsx';
import { editCard } from '../state/editCard.ts';
import { useBench } from '../state/store.ts';

const tools = ['look', 'tape', 'paper', 'add', 'remove'] as const;
export type CopperTool = (typeof tools)[number];
/** Taps of one kind that a card holds. */
export const mostTaps = 12;

interface Props {
  tool: CopperTool;
  setTool(tool: CopperTool): void;
  width: number;
  setWidth(mm: number): void;
  veil: number;
  setVeil(share: number): void;
}

/** What a finger does here, how broad the brush is, how strongly the copper shows. */
export function ToolChoice({ tool, setTool, width, setWidth, veil, setVeil }: Props) {
  const tapped = useBench(({ card }) => card.teach);
  const taps = tool === 'paper' ? tapped.paper.length : tapped.copper.length;
  const { copper } = words;
  return (
    <>
      <Radios
        legend={copper.tool}
        name="copper-tool"
        offered={tools}
        labels={copper.tools}
        chosen={tool}
        choose={setTool}
      />
      <p className="pencil">{copper.toolHints[tool]}</p>
      {(tool === 'add' || tool === 'remove') && (
        <Slider
          label={copper.width}
          value={width}
          least={0.5}
          most={8}
          step={0.5}
          beside={copper.widthMm(width)}
          set={setWidth}
        />
      )}
      {(tool === 'tape' || tool === 'paper') && (
        <div className="line-of-acts">
          <span>{copper.taught(taps, mostTaps)}</span>
          <button type="button" disabled={taps === 0} onClick={() => forgetTaps(tool)}>
            {copper.forgetTaps}
          </button>
        </div>
      )}
      <Slider
        label={copper.veil}
        value={veil}
        step={0.05}
        beside={`${Math.round(veil * 100)} %`}
        set={setVeil}
      />
    </>
  );
}

function forgetTaps(tool: 'tape' | 'paper'): void {
  const kind = tool === 'tape' ? 'copper' : 'paper';
  editCard((card) => ({ ...card, teach: { ...card.teach, [kind]: [] } }));
}
