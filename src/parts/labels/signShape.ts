import type { GreyPicture } from '../../engine/ocr.ts';

/** A + is about as wide as high. */
const squarest = 1.45;
/** Darker than this is ink in a picture stretched to 0..255. */
const dark = 128;

/**
 * Whether the ink of a cut-out is one + : a bar across and one down its middle, and paper in its four quarters. A
 * recogniser of text reads single signs badly; this shape is plain.
 * @param pad paper round the ink, px
 */
export function isPlus({ width, height, grey }: GreyPicture, pad: number): boolean {
  const [w, h] = [width - 2 * pad, height - 2 * pad];
  if (Math.max(w / h, h / w) > squarest) return false;
  const inked = (x: number, y: number) => grey[Math.floor(y) * width + Math.floor(x)] < dark;
  const share = (x0: number, x1: number, y0: number, y1: number) => {
    let ink = 0;
    for (let j = 0; j < 24; j++)
      for (let i = 0; i < 24; i++)
        if (
          inked(pad + w * (x0 + ((i + 0.5) / 24) * (x1 - x0)), pad + h * (y0 + ((j + 0.5) / 24) * (y1 - y0)))
        )
          ink++;
    return ink / 576;
  };
  const arms = [
    share(0.08, 0.4, 0.4, 0.6),
    share(0.6, 0.92, 0.4, 0.6),
    share(0.4, 0.6, 0.08, 0.4),
    share(0.4, 0.6, 0.6, 0.92),
  ];
  const corners = [
    share(0, 0.3, 0, 0.3),
    share(0.7, 1, 0, 0.3),
    share(0, 0.3, 0.7, 1),
    share(0.7, 1, 0.7, 1),
  ];
  return Math.min(...arms) > 0.45 && Math.max(...corners) < 0.12;
}

/** A − is so many times as wide as high, and ink all over. */
const dash = { least: 2, most: 8, full: 0.7 };

/** Whether the ink of a cut-out is one − : a level bar and nothing else. @param pad paper round the ink, px */
export function isMinus({ width, height, grey }: GreyPicture, pad: number): boolean {
  const [w, h] = [width - 2 * pad, height - 2 * pad];
  if (w / h < dash.least || w / h > dash.most) return false;
  let ink = 0;
  for (let j = pad; j < pad + h; j++)
    for (let i = pad; i < pad + w; i++) if (grey[j * width + i] < dark) ink++;
  return ink / (w * h) > dash.full;
}
