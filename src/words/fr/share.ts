import type { Catalogue } from '../catalogue.ts';

export const shareWords: Catalogue['share'] = {
  share: 'Partager le dossier',
  shared: (name) => `${name} est transmis.`,
  notFreed: (name) =>
    `${name} peut dire où elle a été prise, et cela ne peut être retiré de ce type de fichier. Enregistrez la carte sans la photo, ou prenez une image JPEG, PNG ou WebP.`,
};
