import { useLayoutEffect, useRef } from 'react';
import type { Point } from '../../geometry/index.ts';
import type { Shown } from '../state/types.ts';

const widthMm = 30;
const heightMm = 18;
const pxPerMm = 16;

/** The photograph round a place, enlarged, with a ring about it. */
export function CutOut({ shown, at, label }: { shown: Shown; at: Point; label: string }) {
  const ref = useRef<HTMLCanvasElement>(null);
  const { picture, sheet } = shown;
  useLayoutEffect(() => {
    const context = ref.current?.getContext('2d');
    if (!context) return;
    const k = sheet.pxPerMm;
    const [x, y] = [(at[0] - sheet.originMm[0]) * k, (at[1] - sheet.originMm[1]) * k];
    const [w, h] = [widthMm * k, heightMm * k];
    context.clearRect(0, 0, widthMm * pxPerMm, heightMm * pxPerMm);
    context.drawImage(picture, x - w / 2, y - h / 2, w, h, 0, 0, widthMm * pxPerMm, heightMm * pxPerMm);
    ring(context, (widthMm * pxPerMm) / 2, (heightMm * pxPerMm) / 2);
  }, [picture, sheet, at]);
  return (
    <canvas
      ref={ref}
      className="cut-out"
      role="img"
      aria-label={label}
      width={widthMm * pxPerMm}
      height={heightMm * pxPerMm}
    />
  );
}

function ring(context: CanvasRenderingContext2D, x: number, y: number): void {
  for (const [colour, width] of [
    ['#ffffff', 7],
    ['#9c4a17', 3],
  ] as const) {
    context.beginPath();
    context.arc(x, y, 44, 0, 2 * Math.PI);
    context.strokeStyle = colour;
    context.lineWidth = width;
    context.stroke();
  }
}
