import type { Catalogue } from '../catalogue.ts';

export const cardWords: Catalogue['card'] = {
  notJson: (name) =>
    `${name} n’est pas un fichier de carte\u00a0: ce n’est pas du JSON. Ouvrez-le dans un éditeur de texte, ou enregistrez la carte de nouveau.`,
  unknownKeys: (name, keys, where) =>
    `${name} a une clé qu’aucune carte ne connaît\u00a0: ${keys}${where}. Retirez-la ou corrigez son orthographe.`,
  wrong: (name, where, why) => `${name} est faux à ${where}\u00a0: ${why}. Corrigez et réessayez.`,
  wrongWhole: (name, why) => `${name} n’est pas un fichier de carte\u00a0: ${why}.`,
  within: (where) => ` (dans ${where})`,
  more: (count) => (count === 1 ? ' Un autre tel endroit suit.' : ` ${count} autres tels endroits suivent.`),
  notBase64: 'ce n’est pas du texte base64',
  twice: (name, what, id) => `${name} nomme deux fois ${id} sous ${what}. Donnez un nom propre à chacun.`,
  offBase: (name, what, at, base) =>
    `${name}\u00a0: ${what} à ${at} est hors de la base (${base} mm). Déplacez-le ou réglez le format de la base.`,
};
