import { takenAt } from '../../photo/takenAt.ts';

/** EXIF comes first in a file, with a preview after it, bytes. */
const headBytes = 131_072;

/** When a photograph was taken, by its camera's clock, else the moment at which it came to the page; ISO 8601. */
export async function takenOf(file: Blob): Promise<string> {
  const head = new Uint8Array(await file.slice(0, headBytes).arrayBuffer());
  return takenAt(head) ?? new Date().toISOString();
}
