import { writeFile } from 'node:fs/promises';
import sharp from 'sharp';
import type { Entry } from './catalogue.ts';
import { render } from './render.ts';

/** Writes a generated photograph, its card, its truth and the mask of its copper into a folder. @returns its size, kB */
export async function writeEntry(folder: URL, { name, seed, build, conditions }: Entry): Promise<number> {
  const made = await render(build, conditions, seed, `${name}.jpg`);
  const raw = { width: made.width, height: made.height, channels: 1 as const };
  const mask = await sharp(
    made.mask.map((v) => 255 * v),
    { raw },
  )
    .png({ palette: true, colours: 2 })
    .toBuffer();
  await writeFile(new URL(`${name}.jpg`, folder), made.jpeg);
  await writeFile(new URL(`${name}_mask.png`, folder), mask);
  await writeFile(new URL(`${name}.card.json`, folder), `${JSON.stringify(build.card, null, 1)}\n`);
  await writeFile(new URL(`${name}.json`, folder), `${JSON.stringify(made.truth, null, 1)}\n`);
  return Math.round(made.jpeg.length / 1024);
}
