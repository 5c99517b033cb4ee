import type { Catalogue } from '../catalogue.ts';

const mo = (bytes: number) => `${Math.ceil(bytes / 1e6)} Mo`;

export const labelWords: Catalogue['labels'] = {
  heading: 'Écrit sur la feuille',
  lead: (bytes) =>
    `Le repère du tracé, les noms des LED, les signes + et le type inscrit sur la pile peuvent être lus sur la photo. Le lecteur (${mo(bytes)}) n’est chargé qu’une fois.`,
  read: 'Lire les inscriptions',
  again: 'Relire',
  reading: (percent) => `Lecture des inscriptions\u00a0: ${percent} %`,
  stop: 'Arrêter la lecture',
  nothing: 'Rien n’a été lu qui serve ici.',
  agrees: (count) =>
    count < 2
      ? `${count} inscription concorde avec la carte.`
      : `${count} inscriptions concordent avec la carte.`,
  sure: (percent) => `lu, sûr à ${percent} %`,
  nameLamp: (lamp, as) => `Nommer la LED ${lamp} d’après son inscription, ${as}`,
  nameAll: (count) => `Nommer les ${count} LED d’après leurs inscriptions`,
  ask: (as) => `Quelle LED est ${as}\u00a0? Son inscription peut appartenir à plusieurs.`,
  askLamp: (lamp) => `LED ${lamp}`,
  flip: (lamp) => `Intervertir + et − de la LED ${lamp}\u00a0: un + se trouve à l’autre bout`,
  cell: (kind) => `Noter la pile comme ${kind}`,
  marked: (kind) => `La pile porte ${kind}\u00a0: le reprendre, face + dessus`,
  title: (title) => `Donner à la carte le titre «\u00a0${title}\u00a0»`,
  tagAgrees: (tag) => `Imprimé pour ce tracé\u00a0: ${tag}.`,
  tagOther: (tag) =>
    `Imprimé pour un autre tracé\u00a0: ${tag}. Celui de la carte a un autre repère, ou il n’y en a pas.`,
  tagSize: (width, height) => `Prendre le format imprimé, ${width} x ${height}`,
  tagPlan: (title) => `Prendre le tracé de «\u00a0${title}\u00a0», qui porte ce repère`,
  upsideDown: 'L’écriture est à l’envers\u00a0: la feuille est posée la tête en bas.',
  turn: 'Tourner la feuille d’un demi-tour',
};
