import { useState } from 'react';
import type { Card } from '../../card/index.ts';
import type { FrontMiss } from '../../plan/index.ts';
import { length } from '../../words/lengths.ts';
import { planWords } from '../../words/plan.ts';
import { FileButton } from '../shoot/FileButton.tsx';
import { bench } from '../state/store.ts';
import { tellTrouble } from '../state/trouble.ts';
import { call } from '../worker/client.ts';
import { withoutPictures } from './usePlanChecks.ts';

/** A photographed front laid on the base. */
export interface Front {
  misses: FrontMiss[];
  picture: ImageBitmap;
  /** Its four edges were found with certainty. */
  sure: boolean;
}

type Side = 'back' | 'face';

interface Props {
  card: Card;
  front: Front | undefined;
  setFront(front: Front | undefined): void;
}

const pictures = 'image/*,.heic';

/** Hole centres of a punched front against the lamps, in mm. */
export function FrontCheck({ card, front, setFront }: Props) {
  const { page: text } = planWords;
  const [side, setSide] = useState<Side>('back');
  const [working, setWorking] = useState(false);
  const take = (file: File) => {
    setWorking(true);
    setFront(undefined);
    call('checkFront', { card: withoutPictures(bench().card), name: file.name, file, side })
      .then(setFront)
      .catch(tellTrouble)
      .finally(() => setWorking(false));
  };
  return (
    <section aria-labelledby="plan-front">
      <h2 id="plan-front">{text.frontHeading}</h2>
      {card.lamps.length === 0 ? (
        <p className="pencil">{text.frontNoLamps}</p>
      ) : (
        <>
          <p className="pencil">{text.frontLead}</p>
          <div className="fields">
            <label className="field">
              <span>{text.frontSide}</span>
              <select value={side} onChange={({ target }) => setSide(target.value as Side)}>
                <option value="back">{text.frontSides.back}</option>
                <option value="face">{text.frontSides.face}</option>
              </select>
            </label>
          </div>
          <FileButton label={text.frontChoose} accept={pictures} take={take} />
        </>
      )}
      <div role="status">
        {working && <p>{text.frontWorking}</p>}
        {front && !front.sure && <p className="warn">{text.frontUnsure}</p>}
        {front && <FrontLines card={card} misses={front.misses} />}
      </div>
    </section>
  );
}

function FrontLines({ card, misses }: { card: Card; misses: FrontMiss[] }) {
  const { page: text } = planWords;
  const lines = misses.map((miss) => ({ ...miss, said: said(card, miss) }));
  return (
    <>
      {misses.every(({ ok }) => ok) && <p>{text.frontAllRight}</p>}
      <ul className="plan-front">
        {lines.map(({ lamp, ok, said: line }) => (
          <li key={lamp} className={ok ? undefined : 'warn'}>
            {line}
          </li>
        ))}
      </ul>
    </>
  );
}

function said(card: Card, { lamp, hole, missMm, ok }: FrontMiss): string {
  const { page: text } = planWords;
  if (!hole || missMm === undefined) return text.frontNone(lamp);
  if (ok) return text.frontOk(lamp, length(missMm));
  const { plus, minus } = card.lamps.find(({ id }) => id === lamp)!;
  const [dx, dy] = [hole.at[0] - (plus[0] + minus[0]) / 2, hole.at[1] - (plus[1] + minus[1]) / 2];
  const way = Math.abs(dx) > Math.abs(dy) ? (dx < 0 ? 'left' : 'right') : dy < 0 ? 'up' : 'down';
  return text.frontMiss(lamp, length(missMm), text.frontWays[way]);
}
