import type { Catalogue } from '../catalogue.ts';

export const cliWords: Catalogue['cli'] = {
  help: `foilproof\u00a0: relire un circuit en ruban de cuivre d’après une photo, avant qu’il soit collé

  foilproof check PHOTO... [--card CARTE.json] [--json] [--mask FICHIER.png]
                           [--report FICHIER.html|.pdf|.svg] [--squared FICHIER.png]
                           [--again SECONDE_PHOTO] [--labels] [--summary] [--journal FICHIER] [--paper a4|letter]
  foilproof check --card CARTE.json    les photos de plusieurs feuilles que nomme la carte, ensemble
  foilproof compare --built A.png --plan B.png [--px-per-mm N] [--json]
  foilproof power CARTE.json [--json]
  foilproof plan CARTE.json --print FICHIER.pdf [--paper a4|letter]

Chaque commande prend --language en|de|fr et --units mm|inch.
PHOTO peut être un dossier. Code de sortie\u00a0: 0 bon, 1 des constats arrêtent, 2 contrôle impossible.`,
  unknownCommand: (name) =>
    `Il n’y a pas de commande ${name}. Les commandes sont check, compare, power et plan\u00a0; foilproof --help les montre.`,
  unknownLanguage: (given, known) => `--language prend ${known}, non «\u00a0${given}\u00a0».`,
  unknownUnit: (given, known) => `--units prend ${known}, non «\u00a0${given}\u00a0».`,
  unknownOption: (command, option) =>
    `foilproof ${command} ne connaît pas ${option}\u00a0; foilproof --help montre ce qu’il prend.`,
  optionNeedsValue: (option) => `L’option ${option} demande un nom de fichier après elle.`,
  againNeedsOne: '--again prend une seconde photo d’une feuille\u00a0: donnez une seule photo avec elle.',
  noPhoto: 'foilproof check demande une photo, plusieurs, ou un dossier de photos.',
  noCard: (command) => `foilproof ${command} demande un fichier de carte.`,
  noFile: (path) => `Il n’y a pas de fichier ${path}.`,
  emptyFolder: (path) => `Le dossier ${path} ne contient aucune photo (JPEG, PNG ou WebP).`,
  noPlanPower: 'La carte n’a pas de tracé\u00a0: chaque LED est tenue pour alimentée droit de la pile.',
  badPaper: (name) => `--paper accepte a4 ou letter, pas «\u00a0${name}\u00a0».`,
  noPrint: 'foilproof plan demande --print et le nom d’un fichier PDF à écrire.',
  badReport: (path) => `Un rapport s’écrit en .html, .pdf ou .svg, non en ${path}.`,
  notPng: (option, path) => `${option} écrit un fichier PNG, non ${path}.`,
  cannotWrite: (path) => `Le fichier ${path} ne peut pas être écrit ici.`,
  noPlan: (path) => `${path} n’a pas de tracé à imprimer\u00a0: aucune piste sous "plan".`,
  outlineUnsure: (photo, certainty) =>
    `La base n’a pas pu être trouvée avec certitude dans ${photo} (certitude ${certainty}). Donnez ses quatre coins en corners_px dans la carte, ou photographiez toute la feuille sur une table unie.`,
  unreadable: (photo, why) => `Le cuivre de ${photo} ne peut pas être lu\u00a0: ${why}`,
  unexpected: (photo, message) => `${photo} n’a pas pu être contrôlée\u00a0: ${message}`,
  verdict: { clear: 'Bon à coller', 'clear-once-checked': 'Bon après contrôle', hold: 'Arrêt' },
  couldNot: 'Contrôle impossible',
  count: (holds, checks, notes) =>
    [
      holds > 0 ? `${holds} à corriger` : '',
      checks > 0 ? `${checks} à contrôler à la main` : '',
      notes > 0 ? `${notes} ${notes === 1 ? 'bon' : 'bons'} à savoir` : '',
    ]
      .filter(Boolean)
      .join(', '),
  labels: (count) =>
    count === 0
      ? 'Aucune inscription n’a été lue sur la feuille.'
      : count === 1
        ? '1 inscription lue sur la feuille\u00a0:'
        : `${count} inscriptions lues sur la feuille\u00a0:`,
  sure: (certainty) => `certitude ${certainty}`,
  notSeen: 'Une photo ne peut montrer\u00a0:',
  checking: (done, total) => `${done} sur ${total} contrôlées`,
  stage: {
    decode: 'lecture de la photo',
    square: 'redressement',
    copper: 'recherche du cuivre',
    trace: 'relevé',
    net: 'réseaux',
    power: 'courants',
  },
};
