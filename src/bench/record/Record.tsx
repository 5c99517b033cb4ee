import { useState } from 'react';
import { benchWords as words } from '../../words/bench.ts';
import { shareWords } from '../../words/share.ts';
import { cautionWords } from '../../words/cautions.ts';
import { Sheet } from '../page/Sheet.tsx';
import { PaperField, usualPaper } from '../page/PaperField.tsx';
import { FileButton } from '../shoot/FileButton.tsx';
import { openCardFile } from '../state/openCard.ts';
import { reword } from '../state/editCard.ts';
import { bench, useBench } from '../state/store.ts';
import { tellTrouble } from '../state/trouble.ts';
import { layMarks } from '../verdict/layMarks.ts';
import { ProofMark } from '../verdict/ProofMark.tsx';
import { SquaredSurface } from '../surface/SquaredSurface.tsx';
import '../verdict/verdict.css';
import { sheetEdges } from '../verdict/sheetEdges.ts';
import { saveFile } from './saveFile.ts';
import { shareFile } from './shareFile.ts';
import './record.css';

type Making = 'png' | 'html' | 'pdf' | 'json' | 'cardWith' | 'cardWithout';

/** What goes out: the marked picture, the record, the card file. And what comes in: a card file. */
export default function Record() {
  const shown = useBench((state) => state.shown);
  const note = useBench(({ card }) => card.note ?? '');
  const kept = useBench((state) => state.kept?.at);
  const [made, setMade] = useState('');
  const [paper, setPaper] = useState(usualPaper);
  const { record: text } = words;
  const make = (what: Making) =>
    import('./makings.ts')
      .then((makings) => makings[what](bench(), paper))
      .then(({ name, blob }) => {
        saveFile(name, blob);
        setMade(text.made(name));
      })
      .catch(tellTrouble);
  const share = () =>
    import('./makings.ts')
      .then((makings) => makings.html(bench()))
      .then(async ({ name, blob }) => {
        const fate = await shareFile(name, blob);
        if (fate !== 'left') setMade(fate === 'saved' ? text.made(name) : shareWords.shared(name));
      })
      .catch(tellTrouble);
  const button = (what: Making, needsPhoto: boolean) => (
    <li>
      <button type="button" disabled={needsPhoto && !shown} onClick={() => void make(what)}>
        {text[what]}
      </button>
    </li>
  );
  return (
    <Sheet
      heading={text.heading}
      sheet={
        shown ? (
          <SquaredSurface
            shown={shown}
            label={text.sheetLabel}
            keyCursor={false}
            marks={(view) =>
              layMarks(shown.netlist.findings, view, sheetEdges(view, shown.sheet.baseMm)).map((mark) => (
                <ProofMark key={mark.number} mark={mark} here={false} />
              ))
            }
          />
        ) : (
          <p className="pencil">{text.needsPhoto}</p>
        )
      }
    >
      <p>{text.lead}</p>
      <label className="field">
        <span>{text.note}</span>
        <textarea
          rows={3}
          maxLength={20000}
          placeholder={text.noteHint}
          value={note}
          onChange={({ target }) => reword({ note: target.value || undefined })}
        />
      </label>
      <button type="button" className="main" disabled={!shown} onClick={() => void share()}>
        {shareWords.share}
      </button>
      <ul className="makings">
        {button('html', true)}
        {button('pdf', true)}
        {button('png', true)}
        {button('json', true)}
        {button('cardWith', true)}
        {button('cardWithout', false)}
      </ul>
      <PaperField paper={paper} onChange={setPaper} />
      <p role="status">{made}</p>
      <FileButton
        label={text.open}
        accept=".json,application/json"
        take={(file) => void openCardFile(file)}
      />
      <p className="pencil">{kept ? text.kept(new Date(kept).toLocaleTimeString()) : text.notKept}</p>
      <Cautions />
    </Sheet>
  );
}

function Cautions() {
  return (
    <section className="cautions" aria-labelledby="cautions">
      <h2 id="cautions">{cautionWords.heading}</h2>
      <p>{cautionWords.defer}</p>
      {cautionWords.items.map(({ title, text }) => (
        <details key={title}>
          <summary>{title}</summary>
          <p>{text}</p>
        </details>
      ))}
    </section>
  );
}
