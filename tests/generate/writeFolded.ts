import { mkdir, writeFile } from 'node:fs/promises';
import { foldedCases, foldedShots } from './folded.ts';
import { render } from './render.ts';

/** Remakes fixtures/folded/: the photographs of several sheets, and the cards that name them. */
const folder = new URL('../../fixtures/folded/', import.meta.url);

/** @param chosen names of photographs and cards; all where none is given */
export async function writeFolded(chosen: readonly string[]): Promise<void> {
  const wanted = (name: string) => chosen.length === 0 || chosen.includes(name);
  await mkdir(folder, { recursive: true });
  for (const { name, seed, build, conditions } of foldedShots().filter((each) => wanted(each.name))) {
    const { jpeg } = await render(build, conditions, seed, `${name}.jpg`);
    await writeFile(new URL(`${name}.jpg`, folder), jpeg);
    process.stdout.write(`folded/${name}.jpg ${Math.round(jpeg.length / 1024)} kB\n`);
  }
  for (const { name, card } of foldedCases().filter((each) => wanted(each.name)))
    await writeFile(new URL(`${name}.card.json`, folder), `${JSON.stringify(card, null, 1)}\n`);
}
