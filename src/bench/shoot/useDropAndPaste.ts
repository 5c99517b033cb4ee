import { useEffect, useState } from 'react';
import { openCardFile } from '../state/openCard.ts';
import { takePhoto } from '../state/takePhoto.ts';

/** Takes what is dropped on the page or pasted into it. @returns whether something hovers over it */
export function useDropAndPaste(): boolean {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const listening = new AbortController();
    const { signal } = listening;
    const onDragOver = (event: DragEvent) => {
      event.preventDefault();
      setOver(true);
    };
    const onDrop = (event: DragEvent) => {
      event.preventDefault();
      setOver(false);
      takeFirst(event.dataTransfer);
    };
    addEventListener('dragover', onDragOver, { signal });
    addEventListener('dragleave', () => setOver(false), { signal });
    addEventListener('drop', onDrop, { signal });
    addEventListener('paste', (event: ClipboardEvent) => takeFirst(event.clipboardData), { signal });
    return () => listening.abort();
  }, []);
  return over;
}

function takeFirst(data: DataTransfer | null): void {
  const file = data?.files[0];
  if (!file) return;
  if (file.name.endsWith('.json')) void openCardFile(file);
  else void takePhoto(file, file.name || 'pasted.png');
}
