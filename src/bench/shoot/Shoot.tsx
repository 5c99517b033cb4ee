import { useRef, useState } from 'react';
import { benchWords as words } from '../../words/bench.ts';
import { Choices } from '../page/Choices.tsx';
import { OfflineLine } from '../offline/OfflineLine.tsx';
import { usePhotoUrl } from '../page/usePhotoUrl.ts';
import { openDemo } from '../state/demo.ts';
import { newCard, openCardFile } from '../state/openCard.ts';
import { useBench } from '../state/store.ts';
import { takePhoto } from '../state/takePhoto.ts';
import { Camera } from './Camera.tsx';
import { FileButton } from './FileButton.tsx';
import { KeptCards } from './KeptCards.tsx';
import { SheetPlace } from './SheetPlace.tsx';
import { SheetPhotos } from './SheetPhotos.tsx';
import './shoot.css';
import { useDropAndPaste } from './useDropAndPaste.ts';

const pictures = 'image/jpeg,image/png,image/webp,image/heic,image/heif,.heic';

/** A photograph comes in: by the camera, chosen, dropped or pasted; or a card that was kept or saved. */
export default function Shoot() {
  const [live, setLive] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const over = useDropAndPaste();
  const close = () => {
    setLive(false);
    requestAnimationFrame(() => opener.current?.focus());
  };
  const photos = useBench(({ card }) => card.photos);
  const [placing, place] = useState<string>();
  const placed = photos.find(({ name }) => name === placing);
  if (live) return <Camera onClose={close} />;
  if (placed) return <SheetPlace photo={placed} done={() => place(undefined)} />;
  const { shoot } = words;
  return (
    <div className={over ? 'shoot over' : 'shoot'}>
      <section className="frame">
        <h1>{shoot.heading}</h1>
        <p>{shoot.lead}</p>
        <div className="shoot-ways">
          <FileButton label={shoot.snap} accept="image/*" capture className="main" take={take} />
          <FileButton label={shoot.choose} accept={pictures} take={take} />
          <button ref={opener} type="button" onClick={() => setLive(true)}>
            {shoot.camera}
          </button>
        </div>
        <p className="pencil">{shoot.drop}</p>
        <p className="demo">
          <a href="?demo" onClick={(event) => (event.preventDefault(), void openDemo())}>
            {shoot.demo}
          </a>
          <span>{shoot.demoWhat}</span>
        </p>
      </section>
      <aside className="aside">
        <OnTheSheet />
        <SheetPhotos accept={pictures} place={place} />
        <h2>{shoot.notesHeading}</h2>
        <ul className="notes">
          {shoot.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
        <p className="pencil">{shoot.private}</p>
        <OfflineLine />
        <div className="line-of-acts">
          <FileButton
            label={shoot.openCard}
            accept=".json,application/json"
            take={(file) => void openCardFile(file)}
          />
          <button type="button" onClick={newCard}>
            {shoot.newCard}
          </button>
        </div>
        <KeptCards />
        <Choices />
      </aside>
    </div>
  );
}

function take(file: File): void {
  void takePhoto(file, file.name);
}

/** The photograph that is already there. */
function OnTheSheet() {
  const name = useBench(({ shot }) => shot?.name);
  const url = usePhotoUrl();
  if (!url || !name) return null;
  return (
    <figure className="on-sheet">
      <img src={url} alt={words.photoAlt} />
      <figcaption>
        {words.shoot.retake}: {name}
      </figcaption>
    </figure>
  );
}
