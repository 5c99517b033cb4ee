import { useEffect, useState } from 'react';
import { useBench } from '../state/store.ts';

/** An address for the photograph on the bench, given back when it is no longer shown. */
export function usePhotoUrl(): string | undefined {
  const file = useBench(({ shot }) => shot?.file);
  const [url, setUrl] = useState<string>();
  useEffect(() => {
    if (!file) return setUrl(undefined);
    const made = URL.createObjectURL(file);
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [file]);
  return url;
}
