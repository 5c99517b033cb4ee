import { useState } from 'react';
import type { Card } from '../../card/index.ts';
import { planWords } from '../../words/plan.ts';
import { LengthField } from '../page/LengthField.tsx';
import { Slider } from '../page/Slider.tsx';
import { FileButton } from '../shoot/FileButton.tsx';
import { editCard } from '../state/editCard.ts';
import { artworkOf, artworkScaled, removeArtwork, takeArtwork } from './artworkEdits.ts';
import type { Placing } from './artworkTool.ts';

interface Props {
  card: Card;
  fade: number;
  setFade(fade: number): void;
  placing: Placing | undefined;
  setPlacing(placing: Placing | undefined): void;
}

const pictures = 'image/*,.heic';

/** The front's artwork beneath the plan: chosen, placed, faded, taken away. */
export function Artwork({ card, fade, setFade, placing, setPlacing }: Props) {
  const { page: text } = planWords;
  const there = artworkOf(card) !== undefined;
  const choose = (label: string) => (
    <FileButton label={label} accept={pictures} take={(file) => void takeArtwork(file)} />
  );
  return (
    <details className="plan-part" open={there || undefined}>
      <summary>{text.artworkHeading}</summary>
      {!there ? (
        <>
          <p className="pencil">{text.artworkNone}</p>
          {choose(text.artworkChoose)}
        </>
      ) : (
        <>
          <Slider label={text.artworkFading} value={fade} step={0.05} set={setFade} />
          <div className="line-of-acts">
            {(['corners', 'measure'] as const).map((by) => (
              <button
                key={by}
                type="button"
                aria-pressed={placing?.by === by}
                onClick={() => setPlacing(placing?.by === by ? undefined : { by, taps: [] })}
              >
                {by === 'corners' ? text.artworkCorners : text.artworkMeasure}
              </button>
            ))}
            <button type="button" onClick={() => editCard(removeArtwork)}>
              {text.artworkRemove}
            </button>
            {choose(text.artworkOther)}
          </div>
          {placing?.by === 'measure' && placing.taps.length === 2 && (
            <Distance placing={placing} done={() => setPlacing(undefined)} />
          )}
        </>
      )}
    </details>
  );
}

function Distance({ placing: { taps }, done }: { placing: Placing; done(): void }) {
  const { page: text } = planWords;
  const [a, b] = taps;
  const [mm, setMm] = useState(Math.hypot(b[0] - a[0], b[1] - a[1]));
  const scale = () => {
    editCard((card) => artworkScaled(card, a, b, mm));
    done();
  };
  return (
    <div className="line-of-acts">
      <LengthField label={text.artworkApart} mm={mm} leastMm={1} mostMm={3000} take={setMm} />
      <button type="button" onClick={scale}>
        {text.artworkScale}
      </button>
    </div>
  );
}
