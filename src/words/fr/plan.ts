import type { Catalogue } from '../catalogue.ts';

const maskFaults = {
  open: 'coupure',
  short: 'court-circuit',
  nibble: 'entaille',
  spur: 'ergot',
  'pin-hole': 'piqûre',
  stray: 'cuivre isolé',
  missing: 'absent',
} as const;

const sides = {
  dark: 'le côté sombre est pris pour le conducteur',
  light: 'le côté clair est pris pour le conducteur',
  copper: 'le conducteur est reconnu à sa couleur de cuivre',
} as const;

const usage =
  'foilproof compare --built A.png --plan B.png [--px-per-mm N] [--tolerance-px N] [--conductor dark|light|copper] [--json]';

const many = (count: number, one: string, more: string) => `${count} ${count < 2 ? one : more}`;

export const planWords: Catalogue['plan'] = {
  compareUsage: usage,
  compareNeeds: (option) => `compare demande --${option} FICHIER. Usage\u00a0: ${usage}`,
  unknownOption: (option) => `compare ne connaît pas ${option}. Usage\u00a0: ${usage}`,
  notPositive: (option, given) => `--${option} prend un nombre supérieur à 0, non «\u00a0${given}\u00a0».`,
  notASide: (given) => `--conductor prend dark, light ou copper, non «\u00a0${given}\u00a0».`,
  noFile: (path) => `Il n’y a pas de fichier ${path}. Vérifiez le chemin.`,
  tooUnlike: (built, plan) =>
    `${built} et ${plan} diffèrent trop de taille pour être superposés. Redressez d’abord les deux à la même échelle.`,
  conductorSaid: (name, side, guessed) =>
    `${name}\u00a0: ${sides[side]}${guessed ? ' (--conductor dit le contraire si c’est faux)' : ''}.`,
  maskFault: (kind) => maskFaults[kind],
  maskFaultLine: (kind, x, y, size, net) =>
    `${maskFaults[kind].padEnd(16)} à ${x}, ${y}   ${size}${net ? '   change un réseau' : ''}`,
  progress: (laid, of) => `${laid} sur ${many(of, 'piste', 'pistes')} posées`,
  compareClear: 'Mêmes réseaux\u00a0: ni coupure ni court-circuit par rapport au tracé.',
  compareHolds: (opens, shorts, missing) =>
    `Arrêt\u00a0: ${[
      opens ? many(opens, 'coupure', 'coupures') : '',
      shorts ? many(shorts, 'court-circuit', 'courts-circuits') : '',
      missing ? many(missing, 'partie absente', 'parties absentes') : '',
    ]
      .filter(Boolean)
      .join(', ')} par rapport au tracé.`,

  page: {
    heading: 'Dessiner le tracé',
    lead: 'À l’échelle, sur l’illustration de la couverture ou sur papier blanc. Les bouts se calent sur les bornes, les coins sur 45 et 90 degrés.',
    sheetLabel: 'Le tracé sur la base, à l’échelle',
    keys: 'Suppr retire ce qui est choisi, Échap abandonne la piste en cours. B tenu enfoncé alterne entre la photo et le tracé.',
    tool: 'Poser',
    tools: {
      pick: 'Déplacer et choisir',
      strip: 'Piste',
      lamp: 'LED',
      cell: 'Pile',
      contact: 'Contact',
      patch: 'Pièce isolante',
      flap: 'Rabat',
      artwork: 'Illustration',
    },
    hints: {
      pick: 'Touchez une piste ou une pièce pour la changer\u00a0; tirez un coin ou un bout pour le déplacer.',
      strip: 'Touchez où la piste commence.',
      stripOn: 'Touchez chaque coin\u00a0; touchez encore le dernier point, ou Terminer, pour finir.',
      lamp: 'Touchez le bout + d’une LED, là où l’illustration veut de la lumière.',
      lampMinus: 'Touchez maintenant son bout −.',
      cell: 'Touchez le milieu de la place de la pile.',
      contact: 'Touchez une ouverture qu’un doigt ou un rabat ferme, ou tirez d’un côté à l’autre.',
      patch: 'Tirez d’un coin à l’autre du papier qui sépare deux pistes.',
      flap: 'Tirez le long du bord de la base où le rabat est articulé.',
      artwork: 'Faites glisser l’image à sa place, ou un de ses coins pour l’étirer.',
      corners: (name) => `Touchez le coin ${name} de la couverture dans l’image.`,
      cornerNames: ['en haut à gauche', 'en haut à droite', 'en bas à droite', 'en bas à gauche'],
      measureFrom: 'Touchez l’un de deux points dont vous connaissez la distance.',
      measureTo: 'Touchez maintenant l’autre.',
    },
    net: 'Réseau',
    width: 'Largeur du ruban',
    finish: 'Terminer la piste',
    drop: 'Abandonner',
    removePicked: 'Supprimer le choix',
    base: 'Format de la base',
    snapped: {
      pad: (to) => `calé sur ${to}`,
      spacing: (to) => `espacé également à côté de ${to}`,
      angle: 'calé sur un angle de pli',
      none: '',
    },

    startHeading: 'Un début',
    suggest: 'Proposer un chemin',
    suggesting: 'Recherche d’un chemin sans croisement…',
    suggestion: (strips, tape, folds, crossings) =>
      `${many(strips, 'piste', 'pistes')}, ${tape} de ruban, ${many(folds, 'pli', 'plis')}, ${
        crossings
          ? `${many(crossings, 'croisement', 'croisements')} sur pièces isolantes`
          : 'aucun croisement'
      }.`,
    tracedProposal: (strips) => (strips < 2 ? 'Une piste relevée.' : `${strips} pistes relevées.`),
    noRoute: 'Aucun chemin n’a été trouvé. Donnez plus de place aux LED et à la pile.',
    sketchLost:
      'Les bords du croquis n’ont pas été trouvés. Posez toute la feuille sur une table plus sombre et reprenez la photo.',
    nothingTraced:
      'Aucun trait n’a été trouvé sur le croquis. Tracez des lignes sombres et grasses sur papier blanc et photographiez toute la feuille.',
    accept: 'Prendre',
    refuse: 'Laisser',
    needsParts: 'Un chemin demande la pile et au moins une LED.',
    fromPhoto: 'Relever la photo de la carte',
    fromSketch: 'Relever la photo d’un croquis',
    tracing: 'Relevé du croquis…',

    artworkHeading: 'Illustration dessous',
    artworkNone:
      'Posez une image ou un scan de la couverture sous le tracé, pour que les LED soient là où elle veut de la lumière.',
    artworkChoose: 'Choisir une image de la couverture',
    artworkOther: 'Choisir une autre image',
    artworkFading: 'Force de l’image',
    artworkCorner: (corner) => `Image de la couverture, ${corner}`,
    artworkCornerKeys: 'Les flèches déplacent de 1 mm, avec Maj de 10, avec Alt de 0,1.',
    artworkCorners: 'La placer par ses coins',
    artworkMeasure: 'La mettre à l’échelle par deux points',
    artworkApart: 'Leur distance',
    artworkScale: 'Mettre à l’échelle',
    artworkStop: 'Cesser de placer',
    artworkRemove: 'Retirer l’image',
    artworkAlt: 'Illustration de la couverture',

    strips: 'Pistes, dans l’ordre de pose',
    noStrips: 'Aucune piste n’est encore tracée.',
    remove: (id) => `Retirer ${id}`,
    removeStrip: 'Supprimer la piste',
    stripName: (id) => `Piste ${id}`,
    stripLine: (net, width, length) => `réseau ${net}, large de ${width}, long de ${length}`,
    corners: 'Points le long',
    corner: (n) => `Point ${n}`,
    cornerRemove: (n) => `Retirer le point ${n}`,
    earlier: 'Poser plus tôt',
    later: 'Poser plus tard',
    sheets: 'Pièces isolantes et rabats',
    patch: (id) => `Pièce isolante ${id}`,
    flap: (id) => `Rabat ${id}`,
    patchLine: (width, height) => `${width} x ${height}`,
    flapUse: 'Ce que fait sa fermeture',
    flapUses: {
      cell: 'presse la pile',
      press: 'ferme un contact',
      stroke: 'est balayé le long de contacts',
    },
    liesOn: 'Posée sur',
    onBase: 'la base',
    onFlap: (id) => `le rabat ${id}, dessous ouvert à plat`,
    beneath: 'Pistes qui passent dessous',
    standing: {
      laid: 'posée',
      partly: 'posée en partie',
      shifted: 'posée à côté de sa place',
      'to-lay': 'encore à poser',
      unseen: 'non vue',
      blind: 'brûlé ou noir sur la photo : impossible à dire',
    },

    checksHeading: 'Ce qu’en dit le contrôle',
    checking: 'Contrôle…',
    checksClear: 'Rien ne s’oppose à ce tracé.',
    checksNothing: 'Tracez une piste et elle est contrôlée à mesure.',
    crossing: (nets) =>
      `${nets.join(' et ')} se croisent ici\u00a0: posez une pièce isolante entre eux, ou passez ailleurs.`,
    layPatch: 'Poser une pièce isolante',
    at: (x, y) => `à ${x} de la gauche, ${y} du haut`,

    compareHeading: 'La construction sur le tracé',
    wipe: 'Photo montrée de la gauche jusqu’à',
    wiped: (percent) => `${percent}\u00a0% de la largeur`,
    blink: 'Tenez B, ou ceci, pour alterner',
    blinkKeys: 'Tenu enfoncé, le tracé est caché.',
    noBuild: 'Photographiez la base à l’étape Photo pour poser la construction sur son tracé.',

    printHeading: 'Imprimer à l’échelle 1',
    paper: 'Papier',
    papers: { a4: 'A4', letter: 'Letter, 8½ x 11 pouces' },
    print: 'Faire le PDF',
    printing: 'Création du PDF…',
    printed: (name, bar) => `${name} est fait. Imprimez à 100\u00a0% et mesurez la barre de ${bar}.`,
    fileName: 'trace',

    frontHeading: 'La couverture percée contre les LED',
    frontLead:
      'Photographiez la couverture, trous percés, sur une table sombre, toute la feuille dans l’image.',
    frontSide: 'Côté vu',
    frontSides: { back: 'son dos', face: 'sa face' },
    frontChoose: 'Choisir cette photo',
    frontWorking: 'Mesure des trous…',
    frontUnsure:
      'Les bords de la couverture n’ont peut-être pas été trouvés\u00a0: regardez si elle est bien d’équerre sur la base ici. Sinon, photographiez-la sur une table sombre, les quatre côtés visibles.',
    frontLost:
      'Les bords de la couverture n’ont pas été trouvés. Photographiez-la sur une table sombre, les quatre côtés visibles.',
    frontOk: (lamp, miss) => `${lamp}\u00a0: le trou est dessus, à ${miss} près.`,
    frontMiss: (lamp, miss, way) => `${lamp}\u00a0: le trou la manque de ${miss}, ${way} vu de face.`,
    frontNone: (lamp) => `${lamp}\u00a0: aucun trou auprès.`,
    frontWays: {
      left: 'trop à gauche',
      right: 'trop à droite',
      up: 'trop haut',
      down: 'trop bas',
    },
    frontAllRight: 'Chaque LED a son trou.',
    frontNoLamps: 'Placez d’abord les LED.',
  },
  nothingPlanned:
    'La carte n’a pas de pistes tracées, il n’y a donc rien à imprimer. Dessinez le tracé ou prenez d’abord un chemin proposé.',
  notAPaper: (given) => `--paper prend a4 ou letter, non «\u00a0${given}\u00a0».`,
  printTitle: (title) => (title ? `Tracé de ${title}` : 'Tracé d’un circuit en ruban'),
  baseSheet: 'Base, côté cuivre',
  baseNote:
    'Imprimez à 100 %, mesurez la barre ci-dessous, coupez le long du contour. Posez les pistes dans l’ordre des numéros\u00a0; les tirets en travers d’un coin sont des plis. L’étiquette au bord inférieur reste visible.',
  flapSheet: (id) => `Rabat ${id}, fermé`,
  flapNote:
    'Comme son dessous rencontre la base, vu par transparence d’en haut. Dessiné rabat ouvert, il est retourné autour du pli.',
  punchFront: 'Gabarit de perçage, face de la couverture',
  punchFrontNote: 'Posez-le sur la face de la couverture et piquez à travers les croix.',
  punchBack: 'Gabarit de perçage, dos de la couverture',
  punchBackNote: 'En miroir\u00a0: posez-le au dos de la couverture et percez de là.',
  foamSheet: 'Carte des mousses',
  foamNote:
    'Coupez la mousse à ces contours et posez autant de couches qu’indiqué, pour que la couverture passe la pile et les LED.',
  foamLabel: (layers, high) => `${layers} x ${high}`,
  tile: (row, rows, column, columns) =>
    `partie\u00a0: rang ${row} sur ${rows}, colonne ${column} sur ${columns}`,
  sheetAlt: (title, strips, lamps, holes) =>
    `${title} à l’échelle 1\u00a0: ${strips} pistes, ${lamps} LED, ${holes} trous.`,
  bar: (long) => `${long}. Si elle mesure autre chose, réimprimez à 100 % sans ajuster à la page.`,
  barAlt: (long) => `Une barre longue de ${long} pour vérifier l’échelle de l’impression.`,
  half: '(fendu)',
  cutHeading: 'Liste de coupe',
  cutNote: (roll) =>
    `Les longueurs comptent une largeur de ruban en plus par pli et par bout qui recouvre une autre piste. Ruban du rouleau\u00a0: ${roll}\u00a0; les pistes plus étroites en sont fendues dans la longueur.`,
  cutColumns: ['N°', 'Piste', 'Largeur', 'Posée', 'Plis', 'Recouvr.', 'Coupe'],
  cutTotal: (width, cut, roll) => `Large de ${width}\u00a0: ${cut} à couper, ${roll} du rouleau.`,
  cutSum: (long) => `En tout ${long} du rouleau.`,
  partsHeading: 'Pièces',
  partsColumns: ['Nombre', 'Pièce'],
  lampPart: (colour) => `LED, ${colour}`,
  resistorPart: (ohm) => `résistance de ${ohm} ohm`,
  cellPart: (kind) => `pile bouton ${kind}`,
  tapePart: 'ruban de cuivre',
  patchPart: (wider) =>
    `pièce isolante en papier, plus large de ${wider} de chaque côté que les pistes qui s’y croisent`,
  foamPart: (high) => `couche de ruban mousse, ${high}`,
  stepsHeading: 'Construire, avec un essai après chaque étape',
  test: 'Essai\u00a0:',
  steps: (strips, lamps) => [
    {
      do: 'Imprimez la feuille de base, mesurez la barre, découpez la base et pliez les rabats.',
      test: 'la barre est aussi longue qu’elle le dit, et les rabats se ferment sur leurs repères.',
    },
    ...strips.map(({ id, net }, k) => ({
      do: `Posez la piste ${k + 1}, ${id}. À un coin, pliez d’abord à l’opposé puis rabattez\u00a0; à un recouvrement, repliez le bout dessous pour que le cuivre touche le cuivre.`,
      test: `au multimètre, ou avec une pile et une LED\u00a0: la piste conduit d’un bout à l’autre${
        strips.slice(0, k).some((s) => s.net === net) ? ', et vers les pistes de son réseau déjà posées' : ''
      }${strips.slice(0, k).some((s) => s.net !== net) ? ', et vers aucun autre réseau' : ''}.`,
    })),
    {
      do: `Essayez chacune des ${lamps} LED sur la pile, marquez son plus, et fixez-la sur son contour.`,
      test: 'pile pressée, chaque LED s’allume comme son état le dit\u00a0; retournez celle qui reste éteinte.',
    },
    {
      do: 'Photographiez la base et contrôlez-la avant de rien coller.',
      test: 'le contrôle dit bon à coller, ou bon une fois vu à la main ce qu’il liste.',
    },
    {
      do: 'Percez les trous de lumière, posez la mousse, posez la couverture sans coller.',
      test: 'chaque LED brille par son trou, et la pile se rouvre d’elle-même quand on lâche.',
    },
    {
      do: 'Collez la couverture et enfermez la pile.',
      test: 'la carte s’allume comme prévu, et un enfant ne peut atteindre la pile.',
    },
  ],
};
