import { readdir, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { cliWords } from '../words/cli.ts';
import { FoilproofError } from '../words/index.ts';

const photoName = /\.(jpe?g|png|webp|heic|heif)$/i;

/**
 * The photographs that the command names, folders opened (not their sub-folders), in order.
 * @throws FoilproofError when a path is not there or a folder holds none
 */
export async function photosIn(paths: string[]): Promise<string[]> {
  if (paths.length === 0) throw new FoilproofError(cliWords.noPhoto);
  const found: string[] = [];
  for (const path of paths) {
    const about = await stat(path).catch(() => undefined);
    if (!about) throw new FoilproofError(cliWords.noFile(path));
    if (!about.isDirectory()) {
      found.push(path);
      continue;
    }
    const inside = (await readdir(path)).filter((f) => photoName.test(f)).sort();
    if (inside.length === 0) throw new FoilproofError(cliWords.emptyFolder(path));
    found.push(...inside.map((f) => join(path, f)));
  }
  return found;
}
