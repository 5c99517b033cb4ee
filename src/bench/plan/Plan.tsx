import { useState } from 'react';
import type { Point } from '../../geometry/index.ts';
import type { Routed } from '../../plan/index.ts';
import { openCrossings, snap } from '../../plan/index.ts';
import { planWords } from '../../words/plan.ts';
import { Sheet } from '../page/Sheet.tsx';
import { UndoLine } from '../page/UndoLine.tsx';
import { useBench } from '../state/store.ts';
import './plan.css';
import { addStrip, layPatch } from './planEdits.ts';
import { PlanSheet } from './PlanSheet.tsx';
import { Proposal } from './Proposal.tsx';
import { StripList } from './StripList.tsx';

const words = planWords.page;

/** The plan to scale: drawn by taps or proposed, and the build compared with it. */
export default function Plan() {
  const card = useBench((state) => state.card);
  const shown = useBench((state) => state.shown);
  const [draft, setDraft] = useState<Point[]>([]);
  const [proposed, propose] = useState<Routed>();
  const [net, setNet] = useState('plus');
  const [width, setWidth] = useState(5);
  const [wipe, setWipe] = useState(1);
  const strips = card.plan?.strips ?? [];
  const tap = (at: Point) => {
    const others = strips.filter((strip) => strip.net !== net);
    const settled = snap(at, draft.at(-1), width, card, others, card.limits.clearance_mm + 1);
    setDraft([...draft, settled.at]);
  };
  const finish = () => {
    addStrip({ net, width_mm: width, path: draft.map(([x, y]): [number, number] => [x, y]) });
    setDraft([]);
  };
  return (
    <Sheet
      heading={words.heading}
      sheet={
        <PlanSheet
          card={card}
          shown={shown}
          draft={draft}
          proposed={proposed?.strips ?? []}
          widthMm={width}
          wipe={wipe}
          onTap={tap}
        />
      }
    >
      <p className="pencil">{words.lead}</p>
      <div className="line-of-acts">
        <label>
          {words.net}{' '}
          <input value={net} maxLength={40} onChange={({ target }) => setNet(target.value || 'plus')} />
        </label>
        <label>
          {words.width}{' '}
          <input
            type="number"
            min={1}
            max={20}
            step={0.5}
            value={width}
            onChange={({ target }) => setWidth(Math.min(20, Math.max(1, Number(target.value) || 5)))}
          />
        </label>
        <button type="button" disabled={draft.length < 2} onClick={finish}>
          {words.finish}
        </button>
        <button type="button" disabled={!draft.length} onClick={() => setDraft([])}>
          {words.drop}
        </button>
      </div>
      <Proposal card={card} shown={shown} proposed={proposed} propose={propose} />
      <UndoLine />
      {shown && (
        <label>
          {words.wipe}{' '}
          <input
            type="range"
            min={0}
            max={1}
            step={0.01}
            value={wipe}
            onChange={({ target }) => setWipe(Number(target.value))}
          />
        </label>
      )}
      {shown && <p className="pencil">{words.blink}</p>}
      {openCrossings(card).map((crossing) => (
        <div key={crossing.at.join()} className="line-of-acts">
          <span>{words.crossing(crossing.nets)}</span>
          <button type="button" onClick={() => layPatch(crossing)}>
            {words.patch}
          </button>
        </div>
      ))}
      <StripList strips={strips} compared={shown?.compared} />
      {strips.length > 0 && (
        <p className="pencil">{words.print('foilproof plan CARD.json --print FILE.pdf')}</p>
      )}
    </Sheet>
  );
}
