import type { Card } from '../../card/index.ts';
import { readerBytes } from '../../engine/ocrFiles.ts';
import { attachLabels } from '../../parts/labels/attachLabels.ts';
import { labelWords as words } from '../../words/labels.ts';
import { editCard } from '../state/editCard.ts';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';
import { turnHalf } from '../square/edits.ts';
import type { SheetRead } from '../worker/reading.ts';
import { nameLamps, sortProposals } from './labelEdits.ts';
import { ProposalLine } from './ProposalLine.tsx';
import { readSheet, stopReading } from './read.ts';

/** Reading what is printed on the sheet, on wish; what was read is proposed line by line. */
export function WrittenLabels({ shown, card }: { shown: Shown; card: Card }) {
  const written = useBench((state) => state.written);
  const reading = useBench((state) => state.reading);
  const read = written?.picture === shown.picture ? written.read : undefined;
  return (
    <section className="written" aria-labelledby="written">
      <h2 id="written">{words.heading}</h2>
      {reading === undefined ? (
        <>
          {!read && <p className="pencil">{words.lead(readerBytes)}</p>}
          {read && <ReadLines read={read} card={card} />}
          <button type="button" onClick={() => void readSheet()}>
            {read ? words.again : words.read}
          </button>
        </>
      ) : (
        <div className="line-of-acts" role="status">
          <span>{words.reading(Math.round(100 * reading))}</span>
          <button type="button" onClick={stopReading}>
            {words.stop}
          </button>
        </div>
      )}
    </section>
  );
}

function ReadLines({ read, card }: { read: SheetRead; card: Card }) {
  // A sheet that lies upside down is turned first: its labels lie at other places then.
  if (read.upsideDown)
    return (
      <div className="warn" role="status">
        <p>{words.upsideDown}</p>
        <button type="button" onClick={turnHalf}>
          {words.turn}
        </button>
      </div>
    );
  const { open, agreeing } = sortProposals(attachLabels(read.labels, card), card);
  const names = open.filter((each) => each.do === 'name-lamp');
  return (
    <div role="status">
      {open.length + agreeing === 0 && <p>{words.nothing}</p>}
      {agreeing > 0 && <p>{words.agrees(agreeing)}</p>}
      <ul className="proposed-list">
        {open.map((proposal) => (
          <li key={`${proposal.do} ${proposal.label.at.join()}`}>
            <ProposalLine proposal={proposal} card={card} />
          </li>
        ))}
      </ul>
      {names.length > 1 && (
        <button type="button" onClick={() => editCard((now) => nameLamps(now, names))}>
          {words.nameAll(names.length)}
        </button>
      )}
    </div>
  );
}
