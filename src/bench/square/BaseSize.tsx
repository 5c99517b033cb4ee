import { useState } from 'react';
import { benchWords as words } from '../../words/bench.ts';
import { NumberField } from '../page/NumberField.tsx';
import { editCard } from '../state/editCard.ts';
import { useBench } from '../state/store.ts';
import { setSize } from './edits.ts';
import { nameOfSize, sizes, type SizeName } from './sizes.ts';

const inchMm = 25.4;

/** The base's size: a usual one, or own numbers in mm or inches. */
export function BaseSize() {
  const { width_mm: width, height_mm: height } = useBench(({ card }) => card.base);
  const inches = useBench(({ card }) => card.show_inches ?? false);
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
  const per = inches ? inchMm : 1;
  const digits = inches ? 3 : 1;
  return (
    <div className="base-size">
      <label className="field">
        <span>{square.size}</span>
        <select value={name ?? 'own'} onChange={({ target }) => choose(target.value)}>
          {(Object.keys(sizes) as SizeName[]).map((each) => (
            <option key={each} value={each}>
              {square.sizes[each]}
            </option>
          ))}
          <option value="own">{square.own_size}</option>
        </select>
      </label>
      {name === undefined && (
        <div className="fields">
          <NumberField
            label={square.width}
            value={width / per}
            digits={digits}
            least={10 / per}
            most={2000 / per}
            take={(value) => setSize(value * per, height)}
          />
          <NumberField
            label={square.height}
            value={height / per}
            digits={digits}
            least={10 / per}
            most={2000 / per}
            take={(value) => setSize(width, value * per)}
          />
          <label className="field">
            <span>{square.unit}</span>
            <select
              value={inches ? 'inch' : 'mm'}
              onChange={({ target }) =>
                editCard((card) => ({ ...card, show_inches: target.value === 'inch' || undefined }))
              }
            >
              <option value="mm">{square.unitMm}</option>
              <option value="inch">{square.unitInch}</option>
            </select>
          </label>
        </div>
      )}
    </div>
  );
}
