import { useState, type KeyboardEvent } from 'react';
import type { Card } from '../../card/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { Snapped } from '../../plan/index.ts';
import { planWords } from '../../words/plan.ts';
import { Sheet } from '../page/Sheet.tsx';
import { UndoLine } from '../page/UndoLine.tsx';
import { PartList } from '../parts/PartList.tsx';
import '../parts/parts.css';
import { BaseSize } from '../square/BaseSize.tsx';
import { editCard } from '../state/editCard.ts';
import { change, useBench } from '../state/store.ts';
import { usePicture } from '../page/usePicture.ts';
import { Artwork } from './Artwork.tsx';
import { artworkOf } from './artworkEdits.ts';
import { ArtworkHandles } from './ArtworkHandles.tsx';
import { artworkTool, type Placing } from './artworkTool.ts';
import { Compared } from './Compared.tsx';
import { FrontCheck, type Front } from './FrontCheck.tsx';
import type { Picked } from './picked.ts';
import './plan.css';
import { PlanChecksList } from './PlanChecksList.tsx';
import { removePicked } from './planEdits.ts';
import { PlanStates } from './PlanStates.tsx';
import { PlanSurface } from './PlanSurface.tsx';
import { finishStrip, planTool, type Desk, type Draft, type PlanTool } from './planTool.ts';
import { PrintLine } from './PrintLine.tsx';
import { Proposal, type Proposed } from './Proposal.tsx';
import { SheetList } from './SheetList.tsx';
import { StripDraft } from './StripDraft.tsx';
import { StripList } from './StripList.tsx';
import { ToolRow } from './ToolRow.tsx';
import { isTyping, useBlink } from './useBlink.ts';
import { usePlanChecks } from './usePlanChecks.ts';

/** The plan to scale: drawn, traced or proposed, checked while it is drawn, printed, and the build compared with it. */
export default function Plan() {
  const card = useBench((state) => state.card);
  const shown = useBench((state) => state.shown);
  const part = useBench((state) => state.part);
  const [tool, setTool] = useState<PlanTool>(card.plan?.strips.length ? 'pick' : 'strip');
  const [draft, setDraft] = useState<Draft>({ path: [], net: 'plus', widthMm: 5 });
  const [settledBy, settled] = useState<Snapped>();
  const [pickedOther, setPicked] = useState<Picked>();
  const [plus, setPlus] = useState<Point>();
  const [moved, setMoved] = useState<Card>();
  const [box, setBox] = useState<readonly [Point, Point]>();
  const [proposed, propose] = useState<Proposed>();
  const [placing, setPlacing] = useState<Placing>();
  const [front, setFront] = useState<Front>();
  const [fade, setFade] = useState(0.6);
  const [wipe, setWipe] = useState(shown ? 1 : 0);
  const [hidden, hide] = useBlink();
  const { checks, checking } = usePlanChecks();
  // A part's line is open where the whole bench says so; all else is picked here.
  const picked: Picked | undefined = part === undefined ? pickedOther : { kind: 'part', id: part };
  const pick = (next: Picked | undefined) => {
    setPicked(next?.kind === 'part' ? undefined : next);
    change({ part: next?.kind === 'part' ? next.id : undefined });
  };
  const desk: Desk = { draft, setDraft, settled, pick, plus, setPlus, setMoved, setBox };
  const dropDraft = () => {
    setDraft({ ...draft, path: [] });
    settled(undefined);
  };
  const choose = (next: PlanTool) => {
    setTool(next);
    setPlus(undefined);
    setPlacing(undefined);
    dropDraft();
  };
  const deletePicked = () => {
    if (!picked) return;
    editCard((now) => removePicked(now, picked));
    pick(undefined);
  };
  const onKey = (event: KeyboardEvent) => {
    if (isTyping(event.target)) return;
    if (event.key === 'Delete' || event.key === 'Backspace') deletePicked();
    else if (event.key === 'Escape' && draft.path.length) dropDraft();
    else return;
    event.preventDefault();
  };
  const picture = usePicture(artworkOf(card));
  const working =
    tool === 'artwork' || placing
      ? artworkTool(placing, setPlacing, setMoved, picture)
      : planTool(tool, desk);
  const { page: text } = planWords;
  return (
    <div onKeyDown={onKey}>
      <Sheet
        withTools
        heading={text.heading}
        sheet={
          <PlanSurface
            card={moved ?? card}
            shown={shown}
            front={front}
            checks={checks}
            tool={working}
            draft={draft}
            proposed={proposed}
            picked={picked}
            plus={plus}
            box={box}
            taps={placing?.taps ?? []}
            fade={fade}
            wipe={front ? 0 : wipe}
            hidden={hidden}
            handles={(view) =>
              tool === 'artwork' &&
              !placing &&
              picture && <ArtworkHandles card={moved ?? card} picture={picture} view={view} />
            }
          />
        }
      >
        <ToolRow
          tool={tool}
          choose={choose}
          card={card}
          draft={draft}
          plus={plus}
          placing={placing}
          settled={settledBy}
        />
        {tool === 'strip' && (
          <StripDraft draft={draft} setDraft={setDraft} finish={() => finishStrip(desk)} drop={dropDraft} />
        )}
        <div className="line-of-acts">
          <UndoLine />
          <button type="button" disabled={!picked} onClick={deletePicked}>
            {text.removePicked}
          </button>
        </div>
        <PlanChecksList checks={checks} checking={checking} />
        <Proposal card={card} shown={shown} widthMm={draft.widthMm} proposed={proposed} propose={propose} />
        <StripList card={card} compared={shown?.compared} picked={picked} pick={pick} />
        <SheetList card={card} picked={picked} pick={pick} />
        <PartList card={card} part={part} />
        <PlanStates checks={checks} />
        <Artwork card={card} fade={fade} setFade={setFade} placing={placing} setPlacing={setPlacing} />
        <details className="plan-part">
          <summary>{text.base}</summary>
          <BaseSize />
        </details>
        {shown ? (
          <Compared compared={shown.compared} wipe={wipe} setWipe={setWipe} hide={hide} />
        ) : (
          <p className="pencil">{text.noBuild}</p>
        )}
        <PrintLine card={card} />
        <FrontCheck card={card} front={front} setFront={setFront} />
      </Sheet>
    </div>
  );
}
