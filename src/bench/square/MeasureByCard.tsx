import { useState } from 'react';
import type { Quad } from '../../geometry/index.ts';
import { nearestSize } from '../../sheet/sizes.ts';
import { benchWords as words } from '../../words/bench.ts';
import { tellTrouble } from '../state/trouble.ts';
import { call } from '../worker/client.ts';
import type { Calls } from '../worker/protocol.ts';
import { setSize } from './edits.ts';

type Measured = Calls['measureByCard']['answer'];

/** A usual size this near what was measured is meant, mm: the card gives some 1 %. */
const usualMm = 3;

/** Measures the base by a bank or library card that lies beside it, for a base whose size is not known. */
export function MeasureByCard({ corners }: { corners: Quad }) {
  const [measured, setMeasured] = useState<Measured>();
  const { byCard: text } = words.square;
  const measure = () => call('measureByCard', { corners }).then(setMeasured).catch(tellTrouble);
  return (
    <div className="by-card">
      <button type="button" onClick={() => void measure()}>
        {text.act}
      </button>
      <div role="status">
        {measured === null && <p className="warn">{text.none}</p>}
        {measured && <Offer measured={measured} />}
      </div>
    </div>
  );
}

function Offer({ measured: { width, height } }: { measured: NonNullable<Measured> }) {
  const { byCard: text } = words.square;
  const near = nearestSize(width, height, usualMm);
  const [short, long] = near ? [near.width, near.height] : [Math.min(width, height), Math.max(width, height)];
  const size = width < height ? ([short, long] as const) : ([long, short] as const);
  const tenth = (v: number) => Math.round(v * 10) / 10;
  return (
    <p>
      {text.found(width, height)}{' '}
      <button type="button" onClick={() => setSize(tenth(size[0]), tenth(size[1]))}>
        {text.take(size[0], size[1], near?.name)}
      </button>
    </p>
  );
}
