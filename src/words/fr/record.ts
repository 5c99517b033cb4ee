import type { Catalogue } from '../catalogue.ts';

export const recordWords: Catalogue['record'] = {
  untitled: 'Carte sans titre',
  heading: (title) => `${title}\u00a0: dossier de relecture`,
  verdict: {
    clear: 'Bon à coller',
    'clear-once-checked': (open) => `Bon après contrôle\u00a0: ${open} à trancher à la main`,
    hold: (holding) => `Arrêt\u00a0: ${holding} à corriger`,
  },
  madeFrom: (photo, width, height) => `Fait d’après ${photo}. Base de ${width} x ${height}.`,
  readAt: (density, gap) =>
    `La photo montre ${density} sur la base\u00a0; la coupure la plus fine qu’elle peut montrer est de ${gap}.`,
  sections: {
    sheet: 'La feuille avec ses marques de relecture',
    findings: 'Constats',
    redrawn: 'Le circuit redessiné à l’échelle',
    diagram: 'Schéma du circuit',
    states: 'Ce qui s’allume dans chaque état',
    power: 'Courant et durée',
    nets: 'Réseaux',
    parts: 'Pièces',
    cuts: 'Pistes',
    steps: 'Photos par étape',
    notSeen: 'Non vu',
    cautions: 'Précautions',
    note: 'Note de l’auteur',
  },
  certainty: (percent) => `certitude ${percent}\u00a0%`,
  toDo: 'À faire',
  toSettle: 'Ce qui tranche',
  settledBy: (note) => (note ? `Tranché à la main\u00a0: ${note}` : 'Tranché à la main.'),
  noFindings: 'Rien à y redire.',
  nothingUnseen: 'Rien n’était caché à la photo.',
  figure: {
    sheet: (count) =>
      count < 2
        ? `La photo redressée avec ${count} marque de relecture`
        : `La photo redressée avec ${count} marques de relecture`,
    cutOut: (number) => `La photo autour de la marque ${number}`,
    redrawn:
      'Le cuivre relevé, les LED avec leur plus, la pile, contacts et pièces isolantes\u00a0; à l’échelle',
    lamps:
      'Chaque LED aussi vive qu’elle paraîtrait, dans chaque état\u00a0: son halo est sa lumière, une croix une LED éteinte',
    diagram:
      'LED, pile et contacts en symboles normalisés\u00a0; les lignes sont des réseaux, non des pistes',
  },
  redrawn: {
    up: (face) => `${face} dessus`,
    bar: (long) => `${long}\u00a0; mesurez-la pour savoir si l’impression est juste`,
    ohm: (ohm) => `${ohm} ohm`,
  },
  power: {
    advice: 'Pour mieux l’éclairer',
    joints: 'Joints à presser d’abord',
    lesson: 'Pourquoi les joints comptent et le ruban non',
  },
  states: {
    caption: 'Courant des LED en mA par état\u00a0; allumée, faible ou éteinte',
    state: 'État',
    cell: 'Pile',
    shorted: 'en court-circuit',
    looks: { lit: 'allumée', dim: 'faible', dark: 'éteinte' },
  },
  nets: {
    caption: 'Le cuivre qui est joint, et ce qui est dessus',
    head: ['Réseau', 'Morceaux', 'Bornes', 'Cuivre'],
  },
  parts: {
    caption: 'Ce qu’il faut pour la carte',
    head: ['Pièce', 'Quoi', 'Où'],
    lamp: (colour) => `LED, ${colour}`,
    series: (ohm) => `avec ${ohm} ohm en série`,
    own: (volt, mA) => `${volt} V à ${mA} mA`,
    cell: (kind, up) => `${kind}, ${up} dessus`,
    flap: 'rabat',
    patch: 'pièce isolante',
    press: 'contact, pressé',
    stroke: (order) => `contact, balayé${order}`,
    cellName: 'pile',
    pads: (plus, minus) => `+ à ${plus}, - à ${minus}`,
  },
  strips: {
    caption: 'Le cuivre tel qu’il est sur la feuille',
    head: ['Morceau', 'Réseau', 'Largeur usuelle', 'Ligne médiane', 'Cuivre'],
    planned: 'Liste de coupe, dans l’ordre de pose',
    plannedHead: ['Piste', 'Réseau', 'Largeur', 'Posée', 'Plis', 'Recouvr.', 'Coupe'],
    total: (length) =>
      `En tout ${length} à couper\u00a0: chaque pli et chaque bout qui recouvre une autre piste demande une largeur de ruban de plus que ce qui est posé.`,
  },
  steps: {
    base: 'la base',
    again: 'autre prise de la base',
    after: (patch) => `la base avec la pièce isolante ${patch}`,
    front: 'la couverture',
  },
  step: (name, step, taken) => [step, name, taken].filter(Boolean).join(', '),
  page: (number, of) => `${number} / ${of}`,
  unknown: 'non dit',
};
