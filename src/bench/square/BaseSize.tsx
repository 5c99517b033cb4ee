import { useState } from 'react';
import { benchWords as words } from '../../words/bench.ts';
import { length, lengthFigure } from '../../words/lengths.ts';
import { LengthField } from '../page/LengthField.tsx';
import { UnitChoice } from '../page/UnitChoice.tsx';
import { useBench } from '../state/store.ts';
import { setSize } from './edits.ts';
import { nameOfSize, sizes, type SizeName } from './sizes.ts';

/** The base's size: a usual one, or own numbers in mm or inches. */
export function BaseSize() {
  const { width_mm: width, height_mm: height } = useBench(({ card }) => card.base);
  const [own, setOwn] = useState(false);
  const name = own ? undefined : nameOfSize(width, height);
  const choose = (chosen: string) => {
    setOwn(chosen === 'own');
    if (chosen === 'own') return;
    const [short, long] = sizes[chosen as SizeName];
    if (width <= height) setSize(short, long);
    else setSize(long, short);
  };
  const { square } = words;
  return (
    <div className="base-size">
      <label className="field">
        <span>{square.size}</span>
        <select value={name ?? 'own'} onChange={({ target }) => choose(target.value)}>
          {(Object.keys(sizes) as SizeName[]).map((each) => (
            <option key={each} value={each}>
              {sayName(each)}
            </option>
          ))}
          <option value="own">{square.own_size}</option>
        </select>
      </label>
      {name === undefined && (
        <div className="fields">
          <LengthField
            label={square.width}
            mm={width}
            leastMm={10}
            mostMm={2000}
            take={(mm) => setSize(mm, height)}
          />
          <LengthField
            label={square.height}
            mm={height}
            leastMm={10}
            mostMm={2000}
            take={(mm) => setSize(width, mm)}
          />
          <UnitChoice id="base-unit" label={square.unit} />
        </div>
      )}
    </div>
  );
}

/** Sizes of a series are told with their lengths; the others are called by theirs. */
function sayName(name: SizeName): string {
  const [short, long] = sizes[name];
  const called = words.square.sizes[name];
  return /^A\d$/.test(name) ? `${called}, ${lengthFigure(short, 0)} x ${length(long, 0)}` : called;
}
