import type { Catalogue } from '../catalogue.ts';

export const foldWords: Catalogue['fold'] = {
  unknownSheet: (photo, sheet) =>
    `${photo} est dite montrer ${sheet}, mais la carte n’a pas de rabat de ce nom. Ajoutez le rabat, ou nommez la base.`,
  noBasePhoto: 'La carte ne nomme aucune photo de sa base\u00a0: donnez-en une dont la feuille est "base".',
  pictureGone: (photo) => `La photo ${photo} que nomme la carte n’est pas là.`,
  offRegister: {
    say: (photo, mm, by) =>
      `${photo} ne se pose pas bien sur la base\u00a0: ce que les deux montrent est à ${mm} d’écart (posée par ${by}).`,
    by: { corners: 'ses coins', fold: 'la ligne de pli', copper: 'le cuivre commun' },
    do: 'Vérifiez ses quatre coins, son format et la ligne de pli, ou photographiez-la de nouveau, bien à plat.',
    settle: (within) =>
      `Est-ce la même carte, ses coins dans le bon ordre\u00a0? Alors ce que les deux montrent est à moins de ${within}.`,
  },
  inParts: {
    heading: 'Pièces isolantes et rabats',
    none: 'Aucun pour l’instant. Une pièce isolante sépare deux bandes qui se croisent\u00a0; un rabat ferme des contacts ou appuie sur la pile.',
    edit: 'Les dessiner et les modifier à l’étape Plan',
  },
  sheets: {
    heading: 'Autres feuilles de cette carte',
    which: 'La photo montre',
    flap: (id) => `le rabat ${id}, ouvert à plat`,
    before: (id) => `la base avant la pièce isolante ${id}`,
    add: 'Ajouter sa photo',
    remove: (name) => `Retirer ${name}`,
    laid: (by, mm) => `Posée par ${by}, à ${mm} près.`,
    spread: (flap) => `l’intérieur de la base pliée, avec le rabat ${flap}`,
    place: (name) => `Coins et ligne de pli de ${name}`,
    placeLabel: (name) => `${name} avec les coins de sa feuille et sa ligne de pli`,
    placeFold:
      'Tirez les quatre coins sur ceux de la feuille et les deux poignées bleues sur son pli, ou donnez ses bouts en chiffres\u00a0: en mm depuis le coin supérieur gauche de la feuille.',
    placeCorners: 'Tirez les quatre coins sur ceux de la feuille, puis donnez sa taille.',
    foldEnds: ['Premier bout du pli', 'Second bout du pli'],
    foldAsDrawn: 'Ligne de pli comme sur le plan',
    notLaid: 'Posée sur la base dès que celle-ci est photographiée.',
    done: 'Terminé',
  },
  closing: {
    foam: {
      heading: 'Mousse',
      cell: (x, y) => `Deux couches autour de la pile (${x} ; ${y}), sur trois de ses côtés.`,
      strokeEnd: (x, y) =>
        `Un morceau après la fin de la rangée balayée (${x} ; ${y}), pour que le rabat s’écarte de nouveau.`,
      rest: 'Ailleurs une couche, à l’écart de toute piste qui doit toucher.',
    },
    heading: 'Fermer les rabats',
    lead: 'Le rabat se pose sur la base comme si tous deux étaient de verre.',
    flap: 'Rabat',
    slider: (id) => `Fermeture du rabat ${id}`,
    at: (degrees) => `${degrees} degrés`,
    picture: (id) => `Rabat ${id} sur la base\u00a0: tirez-le par-dessus son pli pour le fermer`,
    meets: (contact, much) => `${contact}\u00a0: recouvrement de ${much} de son côté le plus faible.`,
    misses: (contact, mm, direction) =>
      `${contact}\u00a0: manque son vis-à-vis de ${mm}, il tombe ${direction}.`,
    none: (contact) => `${contact}\u00a0: aucun cuivre du rabat n’y tombe.`,
    tolerance: (percent, off) =>
      `Tient dans ${percent} pliages sur 100 qui s’écartent de ${off} et 1 degré au plus.`,
    sides: { left: 'à gauche', right: 'à droite', above: 'au-dessus', below: 'au-dessous' },
  },
  foldSide: {
    say: (flap) =>
      `Le rabat ${flap} est articulé du mauvais côté\u00a0: le pli le long de son autre bord, son cuivre rencontrerait ses contacts.`,
    do: 'Articulez le rabat le long de son autre bord, ou corrigez la ligne de pli dans la carte. Tout le reste est contrôlé comme si c’était fait.',
    settle: 'Fermez le rabat\u00a0: chacune de ses pistes doit tomber sur ses vis-à-vis.',
  },
};
