import type { Finding } from '../../net/index.ts';
import { sayPlace } from '../../record/sayPlace.ts';
import { sayFinding } from '../../record/sayFinding.ts';
import { benchWords as words } from '../../words/bench.ts';
import { findingWords } from '../../words/findings.ts';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';
import { FileButton } from '../shoot/FileButton.tsx';
import { shootAgain } from '../state/shootAgain.ts';
import { CheckedByHand } from './CheckedByHand.tsx';
import { CutOut } from './CutOut.tsx';
import { Disc } from './ProofMark.tsx';

/** A gap less certain than this is worth another shot. */
const sureGap = 0.8;

interface Props {
  number: number;
  finding: Finding;
  shown: Shown;
  open: boolean;
  onToggle(): void;
}

/** One line of the margin: what is wrong; opened, the place enlarged, what to do, what settles it. */
export function FindingLine({ number, finding, shown, open, onToggle }: Props) {
  const said = sayFinding(finding);
  const { findings: text } = words;
  const card = useBench((state) => state.card);
  const weight = finding.weight === 'holds' && finding.certainty < 0.5 ? 'unsure' : finding.weight;
  return (
    <li id={`finding-${number}`} className={open ? 'finding open' : 'finding'}>
      <button type="button" className="finding-head" aria-expanded={open} onClick={onToggle}>
        <svg viewBox="-14 -14 28 28" aria-hidden="true">
          <Disc number={number} weight={finding.weight} settled={finding.checked !== undefined} />
        </svg>
        <span>
          <span className="only-read">{number}. </span>
          <b>{findingWords.names[finding.kind]}</b>
          <small>{finding.checked ? text.settled(finding.checked.note) : text.weights[weight]}</small>
        </span>
      </button>
      {open && (
        <div className="finding-body">
          <p>{said.say}</p>
          <CutOut shown={shown} at={finding.at} label={text.cutOut(number)} />
          <p>
            <b>{text.toDo}:</b> {said.do}
          </p>
          <p>
            <b>{text.settle}:</b> {said.settle}
          </p>
          <p className="pencil">
            {sayPlace(finding, card)}; {text.certainty(Math.round(finding.certainty * 100))}
          </p>
          {askForAnother(finding) && (
            <FileButton
              label={words.shots.again(number)}
              accept="image/*"
              take={(file) => void shootAgain(file, file.name)}
            />
          )}
          <CheckedByHand finding={finding} />
        </div>
      )}
    </li>
  );
}

/** Glare, or what may be glare: a shot with the light elsewhere tells it from a gap. */
function askForAnother({ kind, certainty, facts }: Finding): boolean {
  return facts.glare === true || (kind === 'gap' && certainty < sureGap);
}
