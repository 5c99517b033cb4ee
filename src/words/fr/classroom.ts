import type { Catalogue } from '../catalogue.ts';

export const classroomWords: Catalogue['classroom'] = {
  heading: 'Beaucoup de cartes d’un même tracé',
  lead: (hasPlan) =>
    hasPlan
      ? 'Choisissez les photos de toutes les cartes\u00a0: chacune est contrôlée d’après le tracé et les pièces de la carte en main.'
      : 'La carte en main n’a pas de tracé\u00a0: chaque photo n’est contrôlée que d’après ses pièces. Dessinez d’abord le tracé pour davantage.',
  choose: 'Choisir des photos',
  shoot: 'Prendre une photo de plus',
  stop: 'Arrêter',
  goOn: 'Continuer',
  print: 'Imprimer une fiche par carte',
  forget: 'Oublier ces cartes',
  progress: (done, total) => `${done} sur ${total} contrôlées`,
  columns: { card: 'Carte', verdict: 'Avis', faults: 'À réparer', check: 'À contrôler' },
  waiting: 'en attente',
  couldNot: 'Contrôle impossible',
  tableLabel: 'Les cartes et leurs avis',
  slip: (card) => `Fiche de ${card}`,
  nothing: 'Rien ne s’oppose à cette carte.',
  verdicts: {
    clear: 'Bon à coller',
    'clear-once-checked': 'Bon après contrôle',
    hold: 'Arrêt',
    none: 'Contrôle impossible',
  },
  counted: (verdict, cards) => `${verdict}\u00a0: ${cards}`,
  commonest: (fault, cards, total) =>
    `Défaut le plus fréquent\u00a0: ${fault}, sur ${cards} cartes de ${total}.`,
  noFault: 'Aucun défaut n’arrête une carte.',
  notJournal: (path) =>
    `${path} n’est pas le journal d’un passage précédent. Donnez à --journal un nouveau nom de fichier, ou le journal du passage à poursuivre.`,
  noJournal: (path) => `Le journal ${path} ne peut pas être écrit ici.`,
  resumed: (done, total) => `${done} sur ${total} étaient déjà contrôlées lors d’un passage précédent.`,
};
