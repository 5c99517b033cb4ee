import bold from '@fontsource/source-sans-3/files/source-sans-3-latin-600-normal.woff?url';
import regular from '@fontsource/source-sans-3/files/source-sans-3-latin-400-normal.woff?url';
import type { RecordFonts } from './types.ts';

/** Source Sans 3 (SIL Open Font License 1.1), served from the page's own origin. */
export async function fontsInBrowser(): Promise<RecordFonts> {
  return { regular: await bytes(regular), bold: await bytes(bold) };
}

async function bytes(url: string): Promise<Uint8Array> {
  return new Uint8Array(await (await fetch(url)).arrayBuffer());
}
