import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { RecordFonts } from './types.ts';

const require = createRequire(import.meta.url);
const file = (weight: number) =>
  require.resolve(`@fontsource/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff`);

/** Source Sans 3 (SIL Open Font License 1.1) from the installed package. */
export async function fontsInNode(): Promise<RecordFonts> {
  const [regular, bold] = await Promise.all([readFile(file(400)), readFile(file(600))]);
  return { regular, bold };
}
