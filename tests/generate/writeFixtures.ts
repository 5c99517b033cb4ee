import { mkdir, writeFile } from 'node:fs/promises';
import sharp from 'sharp';
import { catalogue } from './catalogue.ts';
import { render } from './render.ts';

/** Remakes fixtures/: per entry the photograph, its card, its truth and the mask of its copper. Names as arguments choose. */
const folder = new URL('../../fixtures/', import.meta.url);
const chosen = process.argv.slice(2);

await mkdir(folder, { recursive: true });
for (const { name, seed, build, conditions } of catalogue()) {
  if (chosen.length > 0 && !chosen.includes(name)) continue;
  const made = await render(build, conditions, seed, `${name}.jpg`);
  const mask = await sharp(
    made.mask.map((v) => 255 * v),
    {
      raw: { width: made.width, height: made.height, channels: 1 },
    },
  )
    .png({ palette: true, colours: 2 })
    .toBuffer();
  await writeFile(new URL(`${name}.jpg`, folder), made.jpeg);
  await writeFile(new URL(`${name}_mask.png`, folder), mask);
  await writeFile(new URL(`${name}.card.json`, folder), `${JSON.stringify(build.card, null, 1)}\n`);
  await writeFile(new URL(`${name}.json`, folder), `${JSON.stringify(made.truth, null, 1)}\n`);
  process.stdout.write(`${name}.jpg ${Math.round(made.jpeg.length / 1024)} kB\n`);
}
