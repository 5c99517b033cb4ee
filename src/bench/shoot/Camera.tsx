import { useRef } from 'react';
import { benchWords as words } from '../../words/bench.ts';
import { useBench } from '../state/store.ts';
import { takePhoto } from '../state/takePhoto.ts';
import { frameOf } from './frameOf.ts';
import { useCamera } from './useCamera.ts';
import { useSteady } from './useSteady.ts';

/** The live camera with an outline to lay the sheet into. */
export function Camera({ onClose }: { onClose: () => void }) {
  const video = useRef<HTMLVideoElement>(null);
  const { trouble, ready, torch, setTorch } = useCamera(video);
  const steady = useSteady(video, ready);
  const { width_mm, height_mm } = useBench(({ card }) => card.base);
  const take = async () => {
    if (!video.current) return;
    const shot = await frameOf(video.current);
    onClose();
    await takePhoto(shot, words.camera.shotName);
  };
  return (
    <section className="camera" aria-label={words.camera.label}>
      <div className="finder">
        <video ref={video} playsInline muted autoPlay aria-label={words.camera.label} />
        <div className="guide" style={{ aspectRatio: `${width_mm} / ${height_mm}` }} aria-hidden="true" />
      </div>
      {trouble ? (
        <p role="alert">{trouble}</p>
      ) : (
        <p role="status" className={steady ? 'steady' : 'pencil'}>
          {!ready ? words.camera.starting : steady ? words.camera.steady : words.camera.moving}
          <small>{words.camera.guide}</small>
        </p>
      )}
      <div className="line-of-acts">
        <button type="button" className="main" disabled={!ready} onClick={() => void take()}>
          {words.camera.take}
        </button>
        {torch !== undefined && (
          <button type="button" aria-pressed={torch} onClick={() => setTorch(!torch)}>
            {words.camera.torch}
          </button>
        )}
        <button type="button" onClick={onClose}>
          {words.camera.close}
        </button>
      </div>
    </section>
  );
}
