import { benchWords as words } from '../../words/bench.ts';
import { editCard } from '../state/editCard.ts';
import { useBench } from '../state/store.ts';

export type CopperTool = 'look' | 'add' | 'remove' | 'teach';
export const mostTaps = 3;

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
  const taps = useBench(({ card }) => card.teach.copper.length);
  const { copper } = words;
  return (
    <>
      <fieldset>
        <legend>{copper.tool}</legend>
        <div className="tools">
          {(['look', 'add', 'remove', 'teach'] as const).map((each) => (
            <label key={each}>
              <input type="radio" name="copper-tool" checked={tool === each} onChange={() => setTool(each)} />
              {copper.tools[each]}
            </label>
          ))}
        </div>
      </fieldset>
      <p className="pencil">{copper.toolHints[tool]}</p>
      {(tool === 'add' || tool === 'remove') && (
        <label className="slide">
          <span>{copper.width}</span>
          <input
            type="range"
            min={0.5}
            max={8}
            step={0.5}
            value={width}
            onChange={({ target }) => setWidth(target.valueAsNumber)}
          />
          <output>{copper.widthMm(width)}</output>
        </label>
      )}
      {tool === 'teach' && (
        <div className="line-of-acts">
          <span>{copper.taught(taps)}</span>
          <button type="button" disabled={taps === 0} onClick={forgetTaps}>
            {copper.forgetTaps}
          </button>
        </div>
      )}
      <label className="slide">
        <span>{copper.veil}</span>
        <input
          type="range"
          min={0}
          max={1}
          step={0.05}
          value={veil}
          onChange={({ target }) => setVeil(target.valueAsNumber)}
        />
        <output>{Math.round(veil * 100)} %</output>
      </label>
    </>
  );
}

function forgetTaps(): void {
  editCard((card) => ({ ...card, teach: { ...card.teach, copper: [] } }));
}
