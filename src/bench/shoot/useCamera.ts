import { useEffect, useRef, useState, type RefObject } from 'react';
import { benchWords } from '../../words/bench.ts';
import { stayAwake } from './stayAwake.ts';

interface CameraState {
  trouble?: string;
  ready: boolean;
  /** Undefined where the device has no torch. */
  torch?: boolean;
  setTorch(on: boolean): void;
}

/** Runs the rear camera at its largest picture while the component is shown; keeps the screen awake meanwhile. */
export function useCamera(video: RefObject<HTMLVideoElement | null>): CameraState {
  const [trouble, setTrouble] = useState<string>();
  const [ready, setReady] = useState(false);
  const [torch, showTorch] = useState<boolean>();
  const track = useRef<MediaStreamTrack>(undefined);
  useEffect(() => {
    const shown = video.current;
    let stopped = false;
    let stream: MediaStream | undefined;
    let letSleep: (() => void) | undefined;
    const begin = async () => {
      stream = await open();
      if (stopped || !shown) return stop(stream);
      track.current = stream.getVideoTracks()[0];
      shown.srcObject = stream;
      await shown.play();
      if (stopped) return;
      if (hasTorch(track.current)) showTorch(false);
      setReady(true);
      letSleep = stayAwake();
    };
    begin().catch((error: unknown) => !stopped && setTrouble(sentence(error)));
    return () => {
      stopped = true;
      stop(stream);
      letSleep?.();
    };
  }, [video]);
  const setTorch = (on: boolean) => {
    const constraints = { advanced: [{ torch: on }] } as unknown as MediaTrackConstraints;
    void track.current?.applyConstraints(constraints).then(() => showTorch(on));
  };
  return { trouble, ready, torch, setTorch };
}

async function open(): Promise<MediaStream> {
  if (!navigator.mediaDevices) throw new DOMException('', 'NotFoundError');
  const video = { facingMode: 'environment', width: { ideal: 4096 }, height: { ideal: 3072 } };
  return navigator.mediaDevices.getUserMedia({ video, audio: false });
}

function stop(stream: MediaStream | undefined): void {
  for (const track of stream?.getTracks() ?? []) track.stop();
}

function hasTorch(track: MediaStreamTrack): boolean {
  return 'torch' in (track.getCapabilities?.() ?? {});
}

function sentence(error: unknown): string {
  const name = error instanceof DOMException ? error.name : '';
  const { denied, none, busy, failed } = benchWords.camera;
  if (name === 'NotAllowedError' || name === 'SecurityError') return denied;
  if (name === 'NotFoundError' || name === 'OverconstrainedError') return none;
  return name === 'NotReadableError' ? busy : failed;
}
