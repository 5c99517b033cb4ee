import type { Catalogue } from '../catalogue.ts';

export const photoWords: Catalogue['photo'] = {
  empty: (name) => `${name} est vide (0 octet). Choisissez la photo de nouveau, ou reprenez-la.`,
  notAnImage: (name) => `${name} n’est pas une photo lisible. Choisissez une image JPEG, PNG ou WebP.`,
  otherKind: (name, kind) =>
    `${name} est un fichier ${kind.toUpperCase()}, qui n’est pas lu ici. Exportez-le en JPEG, PNG ou WebP et choisissez celui-ci.`,
  heic: (name) =>
    `${name} est une photo HEIC, qui ne peut être décodée ici. Exportez-la en JPEG (téléphone\u00a0: partage ou réglages de l’appareil photo, « le plus compatible »\u00a0; ordinateur\u00a0: ouvrez-la et enregistrez en JPEG) et choisissez celle-ci.`,
  truncated: (name) =>
    `${name} s’arrête avant sa fin ou est abîmée. Copiez-la de nouveau de l’appareil, ou reprenez la photo.`,
  tooSmall: (name, width, height) =>
    `${name} n’a que ${width} x ${height} pixels\u00a0: trop peu pour montrer une piste. Prenez la photo en pleine taille.`,
  tooLarge: (name, megapixels, limit) =>
    `${name} a ${megapixels} mégapixels\u00a0; ${limit} au plus sont lus. Réduisez-la (10 pixels par mm suffisent) et choisissez celle-ci.`,
  perMm: (pixels) => `${pixels} pixels par mm`,
  perInch: (pixels) => `${pixels} pixels par pouce`,
  tooSoft: (gap) => `trop floue pour voir ici une coupure de ${gap}`,
  noCanvas:
    'Ce navigateur n’a pas de canevas pour lire les images. Prenez un navigateur plus récent, ou la ligne de commande.',
  blurred:
    'La photo est floue\u00a0: ne bougez pas, touchez pour mettre au point sur le ruban et reprenez-la.',
  tooDark: 'La photo est très sombre\u00a0: ajoutez de la lumière et reprenez-la.',
  burntOut: (percent) =>
    `${percent}\u00a0% de la photo est brûlé\u00a0: tournez la lampe ou la feuille pour que le papier ne brille pas, et reprenez-la.`,
};
