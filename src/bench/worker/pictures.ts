import type { CopperMask } from '../../copper/index.ts';
import type { SquaredSheet } from '../../sheet/index.ts';

/** The squared picture as a bitmap for the page. */
export function pictureOf({ width, height, rgb }: SquaredSheet): ImageBitmap {
  const image = new ImageData(width, height);
  const pixels = new Uint32Array(image.data.buffer);
  for (let k = 0, n = 0; k < rgb.length; k += 3, n++)
    pixels[n] = 0xff000000 | (rgb[k + 2] << 16) | (rgb[k + 1] << 8) | rgb[k];
  return bitmap(image);
}

/** Edge pixels stand full, the inside is a veil; copper that was only filled in is hatched. Alpha, blue, green, red. */
const edge = 0xff287aff;
const inside = 0x6e287aff;
const filledIn = 0xc878dcff;

/** The copper drawn to be laid over the picture. */
export function overlayOf({ width, height, filled, strict }: CopperMask): ImageBitmap {
  const image = new ImageData(width, height);
  const pixels = new Uint32Array(image.data.buffer);
  for (let j = 0, k = 0; j < height; j++) {
    for (let i = 0; i < width; i++, k++) {
      if (!filled[k]) continue;
      const rim = !filled[k - 1] || !filled[k + 1] || !filled[k - width] || !filled[k + width];
      const hatched = !strict[k] && (i + j) % 6 < 2;
      pixels[k] = rim ? edge : hatched ? filledIn : inside;
    }
  }
  return bitmap(image);
}

function bitmap(image: ImageData): ImageBitmap {
  const canvas = new OffscreenCanvas(image.width, image.height);
  canvas.getContext('2d')?.putImageData(image, 0, 0);
  return canvas.transferToImageBitmap();
}
