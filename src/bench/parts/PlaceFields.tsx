import type { Point } from '../../geometry/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { NumberField } from '../page/NumberField.tsx';

interface Props {
  legend: string;
  at: Point;
  take(at: [number, number]): void;
}

/** A place in mm, by numbers. */
export function PlaceFields({ legend, at: [x, y], take }: Props) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div className="fields">
        <NumberField
          label={words.parts.x}
          value={x}
          digits={2}
          least={-300}
          most={2300}
          take={(value) => take([value, y])}
        />
        <NumberField
          label={words.parts.y}
          value={y}
          digits={2}
          least={-300}
          most={2300}
          take={(value) => take([x, value])}
        />
      </div>
    </fieldset>
  );
}
