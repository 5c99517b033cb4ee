import bold from '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf?url';
import regular from '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf?url';
import type { RecordFonts } from './types.ts';

/** Source Sans 3 (SIL Open Font License 1.1), served from the page's own origin. */
export async function fontsInBrowser(): Promise<RecordFonts> {
  return { regular: await bytes(regular), bold: await bytes(bold) };
}

async function bytes(url: string): Promise<Uint8Array> {
  return new Uint8Array(await (await fetch(url)).arrayBuffer());
}
