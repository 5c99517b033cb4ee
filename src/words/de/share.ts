import type { Catalogue } from '../catalogue.ts';

export const shareWords: Catalogue['share'] = {
  share: 'Protokoll teilen',
  shared: (name) => `${name} ist weitergegeben.`,
  notFreed: (name) =>
    `${name} kann verraten, wo es aufgenommen wurde, und das lässt sich aus dieser Art Datei nicht entfernen. Die Kartendatei ohne Foto speichern oder ein JPEG-, PNG- oder WebP-Bild verwenden.`,
};
