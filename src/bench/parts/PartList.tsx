import type { Card } from '../../card/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { change } from '../state/store.ts';
import { CellEditor } from './CellEditor.tsx';
import { ContactEditor } from './ContactEditor.tsx';
import { LampEditor } from './LampEditor.tsx';

/** Every part as a line; the picked one opens to be changed. */
export function PartList({ card, part }: { card: Card; part: string | undefined }) {
  const { parts: text } = words;
  const { lamps, cell, contacts } = card;
  if (lamps.length + contacts.length === 0 && !cell) return <p className="pencil">{text.none}</p>;
  return (
    <ul className="part-list" aria-label={text.list}>
      {lamps.map((lamp) => (
        <PartLine
          key={lamp.id}
          id={lamp.id}
          open={part === lamp.id}
          name={text.lamp(lamp.id)}
          what={text.lampLine(text.colours[lamp.colour], lamp.plus[0], lamp.plus[1])}
        >
          <LampEditor lamp={lamp} />
        </PartLine>
      ))}
      {cell && (
        <PartLine id="cell" open={part === 'cell'} name={text.cell} what={text.cellLine(cell.kind, cell.up)}>
          <CellEditor cell={cell} />
        </PartLine>
      )}
      {contacts.map((contact) => (
        <PartLine
          key={contact.id}
          id={contact.id}
          open={part === contact.id}
          name={text.contact(contact.id)}
          what={text.contactLine(contact.how, contact.order)}
        >
          <ContactEditor contact={contact} />
        </PartLine>
      ))}
    </ul>
  );
}

interface LineProps {
  id: string;
  open: boolean;
  name: string;
  what: string;
  children: React.ReactNode;
}

function PartLine({ id, open, name, what, children }: LineProps) {
  return (
    <li className={open ? 'open' : undefined}>
      <button
        type="button"
        className="part-head"
        aria-expanded={open}
        onClick={() => change({ part: open ? undefined : id })}
      >
        <b>{name}</b>
        <small>{what}</small>
      </button>
      {open && <div className="part-body">{children}</div>}
    </li>
  );
}
