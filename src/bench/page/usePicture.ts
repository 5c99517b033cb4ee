import { useEffect, useState } from 'react';
import type { CardPhoto } from '../../card/index.ts';

/** A picture held in a card, ready to be shown, with its upright size in px. */
export interface ShownPicture {
  url: string;
  width: number;
  height: number;
}

/** A photograph of the card as the page shows it; nothing while it is opened or where the browser cannot. */
export function usePicture(held: Pick<CardPhoto, 'base64' | 'media'> | undefined): ShownPicture | undefined {
  const { base64, media = 'image/jpeg' } = held ?? {};
  const [picture, setPicture] = useState<ShownPicture>();
  useEffect(() => {
    if (base64 === undefined) return setPicture(undefined);
    const url = `data:${media};base64,${base64}`;
    const image = new Image();
    image.onload = () => setPicture({ url, width: image.naturalWidth, height: image.naturalHeight });
    image.src = url;
    return () => (image.onload = null) ?? undefined;
  }, [base64, media]);
  return picture;
}
