import { useEffect, useState, type RefObject } from 'react';
import { frameChange, steadyBelow } from '../../photo/steadiness.ts';

const look = { width: 64, height: 48 };
const everyMs = 150;
/** Looks in a row that must be still. */
const enough = 4;

/** Whether the camera has been held still for a moment. */
export function useSteady(video: RefObject<HTMLVideoElement | null>, running: boolean): boolean {
  const [steady, setSteady] = useState(false);
  useEffect(() => {
    if (!running) return;
    const context = new OffscreenCanvas(look.width, look.height).getContext('2d', {
      willReadFrequently: true,
    });
    let before: Uint8ClampedArray | undefined;
    let still = 0;
    const timer = setInterval(() => {
      if (!context || !video.current || video.current.readyState < 2) return;
      context.drawImage(video.current, 0, 0, look.width, look.height);
      const now = context.getImageData(0, 0, look.width, look.height).data;
      still = before && frameChange(before, now) < steadyBelow ? still + 1 : 0;
      before = now;
      setSteady(still >= enough);
    }, everyMs);
    return () => clearInterval(timer);
  }, [video, running]);
  return steady;
}
