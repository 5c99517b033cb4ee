import { useState } from 'react';
import { foldWords } from '../../words/fold.ts';
import { Slider } from '../page/Slider.tsx';
import { useBench } from '../state/store.ts';
import type { Shown } from '../state/types.ts';
import { FoldPicture } from './FoldPicture.tsx';
import { FoamLines } from './FoamLines.tsx';
import './fold.css';
import { Landings } from './Landings.tsx';
import { useMeetings } from './useMeetings.ts';

/** A flap closing over the base, both seen through: drawn by hand or by the slider, with where its strips land. */
export function FoldView({ shown }: { shown: Shown }) {
  const card = useBench((state) => state.card);
  const [chosen, choose] = useState<string>();
  const [degrees, turn] = useState(0);
  const found = useMeetings(shown.traced, card);
  const flap = card.flaps.find(({ id }) => id === chosen) ?? card.flaps.at(0);
  if (!flap) return null;
  const { closing: words } = foldWords;
  const meetings = found?.meetings.filter((each) => each.flap === flap.id) ?? [];
  return (
    <section className="folding" aria-labelledby="closing">
      <h2 id="closing">{words.heading}</h2>
      <p className="pencil">{words.lead}</p>
      {card.flaps.length > 1 && (
        <label className="field">
          <span>{words.flap}</span>
          <select value={flap.id} onChange={({ target }) => choose(target.value)}>
            {card.flaps.map(({ id }) => (
              <option key={id}>{id}</option>
            ))}
          </select>
        </label>
      )}
      <FoldPicture
        card={card}
        traced={shown.traced}
        flap={flap}
        degrees={degrees}
        turn={turn}
        meetings={meetings}
      />
      <Slider
        label={words.slider(flap.id)}
        value={Math.round(degrees)}
        most={180}
        step={5}
        said={words.at(degrees.toFixed(0))}
        set={turn}
      />
      {found && <Landings card={card} flap={flap.id} found={found} />}
      <FoamLines card={card} />
    </section>
  );
}
