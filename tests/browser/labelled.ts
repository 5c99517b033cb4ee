import { createRequire } from 'node:module';
import { readFile } from 'node:fs/promises';
import { createCanvas, GlobalFonts, loadImage } from '@napi-rs/canvas';
import { applyHomography, homographyFromQuad } from '../../src/sheet/index.ts';
import type { Point, Quad } from '../../src/geometry/index.ts';

/** Height of what is printed, mm: letters of 2 mm, as the plan's own print has them. */
const typeMm = 3;

/** A fixture's photograph with text printed on its base, each at its left end on the line, mm. */
export async function labelled(
  fixture: string,
  texts: readonly { text: string; at: Point }[],
): Promise<Buffer> {
  const truth = JSON.parse(await readFile(`fixtures/${fixture}.json`, 'utf8'));
  const { corners_px, width_mm: width, height_mm: height } = truth.base;
  const toPhoto = homographyFromQuad(corners_px as Quad, { width, height });
  const font = createRequire(import.meta.url).resolve(
    '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf',
  );
  GlobalFonts.registerFromPath(font, 'Label');
  const image = await loadImage(await readFile(`fixtures/${fixture}.jpg`));
  const canvas = createCanvas(image.width, image.height);
  const context = canvas.getContext('2d');
  context.drawImage(image, 0, 0);
  context.fillStyle = '#2a2826';
  for (const { text, at } of texts) {
    const [[x, y], [u, v]] = [at, [at[0] + 1, at[1]] as Point].map((each) => applyHomography(toPhoto, each));
    const pxPerMm = Math.hypot(u - x, v - y);
    context.save();
    context.translate(x, y);
    context.rotate(Math.atan2(v - y, u - x));
    context.font = `${typeMm * pxPerMm}px Label`;
    context.fillText(text, 0, 0);
    context.restore();
  }
  return canvas.toBuffer('image/jpeg', 92);
}
