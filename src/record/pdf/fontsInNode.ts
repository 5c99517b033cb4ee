import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { RecordFonts } from './types.ts';

const require = createRequire(import.meta.url);
const file = (face: string) => require.resolve(`@expo-google-fonts/source-sans-3/${face}.ttf`);

/** Source Sans 3 (SIL Open Font License 1.1) from the installed package, whole: Latin with its extensions, Greek. */
export async function fontsInNode(): Promise<RecordFonts> {
  const [regular, bold] = await Promise.all([
    readFile(file('400Regular/SourceSans3_400Regular')),
    readFile(file('600SemiBold/SourceSans3_600SemiBold')),
  ]);
  return { regular, bold };
}
