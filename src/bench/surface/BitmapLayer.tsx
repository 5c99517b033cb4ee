import { useBitmap } from './useBitmap.ts';
import type { View } from './view.ts';

interface Props {
  bitmap: ImageBitmap;
  /** Size of the content that the bitmap covers, in its own unit. */
  width: number;
  view: View;
  opacity?: number;
}

/** A bitmap laid under the view. */
export function BitmapLayer({ bitmap, width, view, opacity = 1 }: Props) {
  const ref = useBitmap(bitmap);
  const scale = (view.scale * width) / bitmap.width;
  const transform = `translate(${view.x}px, ${view.y}px) scale(${scale})`;
  return <canvas ref={ref} className="layer" style={{ transform, opacity }} />;
}
