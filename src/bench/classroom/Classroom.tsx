import { holds } from '../../net/index.ts';
import { sayTally } from '../../record/classroom/sayTally.ts';
import { tally } from '../../record/classroom/tally.ts';
import { classroomWords as words } from '../../words/classroom.ts';
import { Strip } from '../page/Strip.tsx';
import { FileButton } from '../shoot/FileButton.tsx';
import { useBench } from '../state/store.ts';
import { addToClass, forgetClass, goOn, stopClass, type ClassCard } from './classroom.ts';
import { Slips } from './Slips.tsx';
import './classroom.css';

const pictures = 'image/jpeg,image/png,image/webp,image/heic,image/heif,.heic';

/** Many cards of one plan: a table of verdicts, the commonest fault, and a slip for each. */
export default function Classroom() {
  const cards = useBench(({ classroom }) => classroom);
  const busy = useBench(({ classBusy }) => classBusy);
  const hasPlan = useBench(({ card }) => card.plan !== undefined);
  const done = cards.filter(({ file }) => file === undefined);
  const { counts, commonest } = sayTally(tally(done));
  const take = (file: File) => addToClass(file.name, file);
  return (
    <>
      <section className="classroom">
        <h1>{words.heading}</h1>
        <p>{words.lead(hasPlan)}</p>
        <div className="line-of-acts">
          <FileButton label={words.choose} accept={pictures} several className="main" take={take} />
          <FileButton label={words.shoot} accept="image/*" capture take={take} />
          {busy && (
            <button type="button" onClick={stopClass}>
              {words.stop}
            </button>
          )}
          {!busy && done.length < cards.length && (
            <button type="button" onClick={() => void goOn()}>
              {words.goOn}
            </button>
          )}
        </div>
        {cards.length > 0 && (
          <>
            <div role="status">
              {busy ? (
                <Strip share={done.length / cards.length} label={words.progress(done.length, cards.length)} />
              ) : (
                <p>{words.progress(done.length, cards.length)}</p>
              )}
              {done.length > 0 && <p>{counts.join('; ')}.</p>}
              {done.length > 0 && <p className="commonest">{commonest}</p>}
            </div>
            <Table cards={cards} />
            <div className="line-of-acts">
              <button type="button" disabled={done.length === 0} onClick={() => print()}>
                {words.print}
              </button>
              <button type="button" className="quiet" onClick={forgetClass}>
                {words.forget}
              </button>
            </div>
          </>
        )}
      </section>
      <Slips cards={done} />
    </>
  );
}

function Table({ cards }: { cards: ClassCard[] }) {
  const { columns } = words;
  return (
    <table className="class-table" aria-label={words.tableLabel}>
      <thead>
        <tr>
          <th scope="col">{columns.card}</th>
          <th scope="col">{columns.verdict}</th>
          <th scope="col">{columns.faults}</th>
          <th scope="col">{columns.check}</th>
        </tr>
      </thead>
      <tbody>
        {cards.map((card) => (
          <Row key={card.id} card={card} />
        ))}
      </tbody>
    </table>
  );
}

function Row({ card: { name, file, verdict, findings, why } }: { card: ClassCard }) {
  const toCheck = findings.filter(({ weight }) => weight === 'check').length;
  return (
    <tr className={verdict}>
      <th scope="row">{name}</th>
      <td colSpan={verdict ? 1 : 3}>
        {file ? words.waiting : words.verdicts[verdict ?? 'none']}
        {why && <small>{why}</small>}
      </td>
      {verdict && <td>{findings.filter(holds).length}</td>}
      {verdict && <td>{toCheck}</td>}
    </tr>
  );
}
