import { useLayoutEffect, useRef, type RefObject } from 'react';

/** A canvas that shows a bitmap at its own size, drawn before it is seen. */
export function useBitmap(bitmap: ImageBitmap): RefObject<HTMLCanvasElement | null> {
  const ref = useRef<HTMLCanvasElement>(null);
  useLayoutEffect(() => {
    const canvas = ref.current;
    if (!canvas) return;
    canvas.width = bitmap.width;
    canvas.height = bitmap.height;
    canvas.getContext('2d')?.drawImage(bitmap, 0, 0);
  }, [bitmap]);
  return ref;
}
