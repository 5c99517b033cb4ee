import type { Point } from '../../geometry/index.ts';
import { benchWords as words } from '../../words/bench.ts';
import { LengthField } from '../page/LengthField.tsx';

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
        <LengthField
          label={words.parts.x}
          mm={x}
          leastMm={-300}
          mostMm={2300}
          take={(value) => take([value, y])}
        />
        <LengthField
          label={words.parts.y}
          mm={y}
          leastMm={-300}
          mostMm={2300}
          take={(value) => take([x, value])}
        />
      </div>
    </fieldset>
  );
}
