import { saveFile } from './saveFile.ts';

/**
 * Hands a file to the device's share sheet; where there is none, or it does not take this file, it is saved.
 * @returns what became of it
 */
export async function shareFile(name: string, blob: Blob): Promise<'shared' | 'saved' | 'left'> {
  const data = { files: [new File([blob], name, { type: blob.type })], title: name };
  if (navigator.canShare?.(data)) {
    try {
      await navigator.share(data);
      return 'shared';
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return 'left';
    }
  }
  saveFile(name, blob);
  return 'saved';
}
