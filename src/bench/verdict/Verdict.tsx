import { useState } from 'react';
import { sayPlace } from '../../record/sayPlace.ts';
import { benchWords as words } from '../../words/bench.ts';
import { findingWords } from '../../words/findings.ts';
import { Troubles } from '../copper/Troubles.tsx';
import { FoldView } from '../fold/FoldView.tsx';
import { Sheet } from '../page/Sheet.tsx';
import { change, useBench } from '../state/store.ts';
import { PowerStrip } from '../power/PowerStrip.tsx';
import { usePower } from '../power/usePower.ts';
import { SquaredSurface } from '../surface/SquaredSurface.tsx';
import type { View } from '../surface/view.ts';
import { FindingList } from './FindingList.tsx';
import { Glow } from './Glow.tsx';
import { layMarks } from './layMarks.ts';
import { NotSeen } from './NotSeen.tsx';
import { ProofMark } from './ProofMark.tsx';
import { ShotLines } from './ShotLines.tsx';
import { sheetEdges } from './sheetEdges.ts';
import { StateTable } from './StateTable.tsx';
import './verdict.css';

/** The proof sheet itself: numbered marks on the photograph, lines in the margin. */
export default function Verdict() {
  const shown = useBench((state) => state.shown);
  const mark = useBench((state) => state.mark);
  const card = useBench((state) => state.card);
  const [state, setState] = useState<string>();
  const [charge, setCharge] = useState(card.cell?.charge ?? 1);
  const { report: power, said } = usePower(shown, charge);
  if (!shown) return null;
  const { findings } = shown.netlist;
  const laid = (view: View) => layMarks(findings, view, sheetEdges(view, shown.sheet.baseMm));
  return (
    <Sheet
      heading={words.findings.heading}
      sheet={
        <SquaredSurface
          shown={shown}
          label={words.findings.sheetLabel(findings.length)}
          keyCursor={false}
          marks={(view) => (
            <>
              {state !== undefined && <Glow view={view} power={power} state={state} />}
              {laid(view)
                .sort((a, b) => Number(a.number === mark) - Number(b.number === mark))
                .map((each) => (
                  <ProofMark key={each.number} mark={each} here={each.number === mark} />
                ))}
            </>
          )}
          handles={(view) =>
            laid(view).map(({ number, finding, at, label = at }) => (
              <button
                key={number}
                type="button"
                className="mark-handle"
                style={{ left: label[0], top: label[1] }}
                aria-label={words.findings.mark(
                  number,
                  findingWords.names[finding.kind],
                  sayPlace(finding, card),
                )}
                aria-current={number === mark ? 'true' : undefined}
                onClick={() => lookAt(number)}
              />
            ))
          }
        />
      }
    >
      <Troubles shown={shown} />
      <ShotLines shots={shown.shots} />
      <FindingList shown={shown} mark={mark} />
      <FoldView shown={shown} />
      <NotSeen shown={shown} />
      <StateTable shown={shown} power={power} state={state} setState={setState} />
      <PowerStrip
        report={power}
        said={said}
        state={state}
        setState={setState}
        charge={charge}
        setCharge={setCharge}
      />
    </Sheet>
  );
}

/** Opens a mark's line and brings it into view. */
function lookAt(number: number): void {
  change({ mark: number });
  requestAnimationFrame(() => {
    const line = document.getElementById(`finding-${number}`);
    line?.scrollIntoView({ block: 'nearest' });
    line?.querySelector('button')?.focus({ preventScroll: true });
  });
}
