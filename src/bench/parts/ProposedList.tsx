import type { Suggested } from '../../parts/suggest/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { acceptAll, acceptCell, acceptLamp } from './accept.ts';

/** What the photograph seems to show and the card does not have: one tap takes each. */
export function ProposedList({ proposed }: { proposed: Suggested }) {
  const { lamps, cell } = proposed;
  const count = lamps.length + (cell ? 1 : 0);
  const { proposed: text } = words.parts;
  if (count === 0) return null;
  return (
    <section aria-labelledby="proposed">
      <h2 id="proposed">{text.heading}</h2>
      <p className="pencil">{text.lead}</p>
      <ul className="proposed-list">
        {lamps.map((lamp) => (
          <li key={lamp.plus.join()}>
            <button type="button" onClick={() => acceptLamp(lamp)}>
              {text.lamp((lamp.plus[0] + lamp.minus[0]) / 2, (lamp.plus[1] + lamp.minus[1]) / 2)}
            </button>
            <small>{text.sure(Math.round(100 * lamp.certainty))}</small>
          </li>
        ))}
        {cell && (
          <li>
            <button type="button" onClick={() => acceptCell(cell)}>
              {text.cell(cell.kind, cell.diameterMm)}
            </button>
            <small>{text.sure(Math.round(100 * cell.certainty))}</small>
          </li>
        )}
      </ul>
      {count > 1 && (
        <button type="button" onClick={() => acceptAll(proposed)}>
          {text.all(count)}
        </button>
      )}
    </section>
  );
}
