import type { Catalogue } from '../catalogue.ts';

const ways: Record<string, string> = {
  left: 'à gauche',
  right: 'à droite',
  above: 'au-dessus',
  below: 'au-dessous',
  up: 'vers le haut',
  down: 'vers le bas',
};
const way = (direction: string) => ways[direction] ?? direction;

export const findingWords: Catalogue['findings'] = {
  names: {
    'shorted-cell': 'Pile en court-circuit',
    bridge: 'Pont',
    gap: 'Coupure',
    'reversed-lamp': 'LED à l’envers',
    'lamp-off-strip': 'LED hors de sa piste',
    'lamp-on-one-strip': 'LED sur une seule piste',
    'unfed-lamp': 'LED sans courant',
    'lit-at-rest': 'Allumée trop tôt',
    'missed-contact': 'Contact manqué',
    'missing-strip': 'Piste encore à poser',
    'extra-strip': 'Piste en trop',
    'shifted-strip': 'Piste décalée',
    'shifted-lamp': 'LED décalée',
    tight: 'Passage étroit',
    'narrow-neck': 'Étranglement',
    seam: 'Recouvrement',
    'loose-end': 'Bout libre',
    'near-edge': 'Près du bord',
    'off-register': 'Feuille décalée',
  },
  place: (x, y) => `à ${x} de la gauche, ${y} du haut`,
  placeBy: (place, near) => `${place}, ${near}`,
  near: {
    lamp: (id) => `près de la LED ${id}`,
    cell: 'près de la pile',
    contact: (id) => `près du contact ${id}`,
  },
  shortedCell: {
    rim: 'Du cuivre du réseau de la face supérieure passe sous le bord de la pile\u00a0: le boîtier joint les deux faces et la pile chauffe.',
    copper: 'Du cuivre joint les deux faces de la pile\u00a0: elle chauffe et se ruine.',
    do: 'Retirez la pile aussitôt, reculez le cuivre ici et contrôlez de nouveau avant de la remettre.',
    settle: 'Pile retirée, un multimètre entre les deux réseaux ne doit montrer aucune liaison.',
  },
  bridge: {
    say: (width, between, and) =>
      `Du cuivre large de ${width} joint ${between} et ${and}, qui doivent rester séparés.`,
    faint: (width, between, and) =>
      `Une ligne pâle large de ${width} va du réseau de ${between} à celui de ${and}\u00a0: si c’est du cuivre, elle joint ce qui doit rester séparé.`,
    join: (between, and) =>
      `Ce qui est dit conduire ici joint ${between} et ${and}, qui doivent rester séparés.`,
    closed: (flap) => ` Cela arrive quand le rabat ${flap} est fermé.`,
    heat: ' Cela court-circuite la pile\u00a0: elle chauffe et se ruine.',
    do: 'Coupez ou décollez le cuivre ici et lissez les bords.',
    look: 'Regardez à la loupe, ou prenez une deuxième photo. Si c’est du cuivre, coupez-le\u00a0; une ombre, un pli ou un trait de crayon est sans danger.',
    settle:
      'Pile retirée, un multimètre en travers de cet endroit ne doit plus montrer de liaison après la coupe.',
  },
  gap: {
    say: (width) => `La piste est coupée ici\u00a0: ${width} de papier la traverse.`,
    starves: (lamps) => ` Sans elle, ${lamps} ne peut s’allumer.`,
    unsure: (width) =>
      `Une ligne large de ${width} traverse la piste\u00a0; cette photo ne distingue pas une coupure d’un reflet.`,
    do: 'Posez un morceau de ruban neuf sur la coupure, cuivre contre cuivre, et pressez.',
    look: 'Prenez une seconde photo, la lampe inclinée, ou regardez de près ici.',
    settle: (lamps) =>
      lamps
        ? `Pontez avec une chute de cuivre, pile pressée\u00a0: ${lamps} doit s’allumer.`
        : 'Un multimètre le long de la piste doit montrer une liaison.',
  },
  cellReversed: {
    say: (lamps) =>
      `Chaque LED est contraire à la pile (${lamps})\u00a0: c’est la pile qui est à l’envers, non les LED.`,
    do: 'Retournez la pile, ou indiquez quelle face est dessus.',
    settle: 'La pile retournée, toutes doivent s’allumer.',
  },
  reversedLamp: {
    say: (lamp) => `${lamp} est à l’envers\u00a0: sa borne + est du côté moins.`,
    do: (lamp) => `Tournez ${lamp} d’un demi-tour pour que + touche la piste plus.`,
    settle: (lamp) => `Tenez une pile contre les deux pistes, + contre +\u00a0: ${lamp} doit s’allumer.`,
  },
  lampOffStrip: {
    say: (lamp, pad, off) => `La borne ${pad} de ${lamp} manque sa piste${off}.`,
    both: (lamp) => `Aucune borne de ${lamp} ne touche le cuivre.`,
    by: (mm) => ` de ${mm}`,
    do: (lamp) => `Déplacez ${lamp} sur le cuivre, ou posez une chute de ruban de la piste à sa borne.`,
    settle: (lamp) => `Pressez la borne, pile en place\u00a0: ${lamp} doit s’allumer.`,
  },
  lampOnOneStrip: {
    say: (lamp) => `Les deux bornes de ${lamp} sont sur un même réseau\u00a0: le cuivre continue dessous.`,
    do: (lamp) => `Coupez la piste sous ${lamp} pour que chaque borne ait son côté.`,
    settle: 'Un multimètre entre ses deux bornes ne doit montrer aucune liaison.',
  },
  unfedLamp: {
    say: (lamp, side) =>
      side === 'both'
        ? `Aucun état n’allume ${lamp}\u00a0: aucun chemin ne va de la pile à travers elle et retour.`
        : `Aucun état n’allume ${lamp}\u00a0: son côté ${side} ne rejoint jamais la face ${side} de la pile.`,
    do: (side) =>
      side === 'both'
        ? 'Suivez ses pistes des deux bornes vers la pile et trouvez où elles finissent.'
        : `Suivez la piste de sa borne ${side} vers la pile et trouvez où elle finit.`,
    settle: (lamp) =>
      `Touchez les deux bornes avec une pile\u00a0: si ${lamp} s’allume, c’est une piste qui est en cause, non la LED.`,
  },
  litAtRest: {
    say: (lamp, state) =>
      `${lamp} s’allume déjà dans l’état «\u00a0${state}\u00a0», avant que son propre contact ne se ferme.`,
    do: 'Trouvez le cuivre qui contourne son contact et coupez-le.',
    settle: 'Dans cet état elle doit rester éteinte.',
  },
  wrongStep: {
    say: (lamp, state, contact) =>
      `${lamp} s’allume dans l’état «\u00a0${state}\u00a0», alors qu’elle attend ${contact}.`,
    do: 'Échangez les deux pistes, ou changez ce que la LED attend.',
    settle: 'Balayez lentement, pile en place\u00a0: les LED doivent s’allumer l’une après l’autre.',
  },
  outOfOrder: {
    say: (contact, order, among) =>
      `Un doigt ne rencontre pas ${contact} en numéro ${order}\u00a0: ${among} sont dans un autre ordre le long du balayage.`,
    do: 'Numérotez les contacts comme ils sont, ou déplacez-les.',
    settle: 'Balayez lentement, pile en place\u00a0: les LED doivent s’allumer dans leur ordre.',
  },
  nest: {
    low: (foam, cell) =>
      `Une mousse de ${foam} autour d’une pile de ${cell} est trop basse\u00a0: le rabat repose sur la pile et l’allume au repos.`,
    high: (foam, cell) =>
      `Une mousse de ${foam} autour d’une pile de ${cell} est si haute que presser peut ne pas amener le rabat jusqu’à elle.`,
    raise: 'Posez une couche de mousse de plus sur trois côtés de la pile.',
    lower: 'Retirez une couche de mousse.',
    settle: 'Fermez le rabat, pile en place\u00a0: éteint au repos, allumé quand on presse.',
  },
  patch: {
    say: (patch, mm, limit) =>
      `La pièce isolante ${patch} ne couvre le croisement que de ${mm} (au moins ${limit} tout autour).`,
    do: 'Posez une pièce plus grande, ou rognez le cuivre qui passe dessus.',
    settle:
      'Pile retirée, un multimètre entre les deux pistes ne doit montrer aucune liaison, même carte pliée.',
  },
  missedContact: {
    flap: (contact, mm, direction) =>
      `En ${contact}, le cuivre du rabat tombe ${mm} ${way(direction)} de son vis-à-vis.`,
    shift: (direction) => `Décalez-le ${way(direction)}, ou élargissez l’une des pistes.`,
    cell: 'Aucun cuivre ne touche cette face de la pile.',
    none: (contact) => `Le contact ${contact} n’a aucun cuivre à portée.`,
    one: (contact) => `Le contact ${contact} ne trouve de cuivre que d’un côté.`,
    do: 'Prolongez la piste jusqu’ici, ou déplacez le contact.',
    settle: 'Pressez-le, pile en place\u00a0: ses LED doivent s’allumer.',
  },
  missingStrip: {
    say: (strip) => `La piste ${strip} du tracé est encore à poser.`,
    do: 'Posez-la, ou retirez-la du tracé.',
  },
  extraStrip: { say: 'Ce cuivre n’est pas dans le tracé.', do: 'Retirez-le, ou dessinez-le dans le tracé.' },
  shiftedStrip: {
    say: (strip, mm) => `La piste ${strip} est à ${mm} de sa place dans le tracé.`,
    do: 'Vérifiez que ses LED et contacts la touchent toujours.',
  },
  shiftedLamp: {
    say: (lamp, mm) =>
      `${lamp} est à ${mm} de sa place dans le tracé\u00a0: son trou de lumière la manquerait.`,
    do: 'Déplacez la LED, ou percez le trou là où elle est.',
  },
  tight: {
    say: (mm, limit) => `Deux réseaux s’approchent à ${mm} l’un de l’autre (limite ${limit}).`,
    do: 'Rognez une piste, ou couvrez-en une de ruban transparent.',
    settle: 'Pliez doucement la carte, pile en place\u00a0: rien ne doit clignoter.',
  },
  narrowNeck: {
    say: (mm, usual) =>
      `La piste se resserre ici à ${mm} (${usual} ailleurs)\u00a0: elle peut se déchirer quand le papier plie.`,
    do: 'Posez un second morceau de ruban sur l’étranglement.',
    settle: 'Pliez doucement la carte ici, pile en place\u00a0: rien ne doit clignoter.',
  },
  seam: {
    say: 'Un recouvrement\u00a0: une photo ne peut montrer s’il conduit, car l’adhésif ordinaire ne conduit pas.',
    glare:
      'Un reflet cache la piste ici\u00a0: elle est tenue pour entière, mais cette photo ne peut le montrer.',
    do: 'Pressez au plioir, repliez le bout dessous pour que le cuivre touche le cuivre, ou mesurez.',
    settle: 'Pressez ici, pile en place\u00a0: ce qui est au-delà doit s’allumer et le rester.',
  },
  looseEnd: {
    say: 'Une piste finit ici et ne mène à rien qui soit marqué.',
    do: 'Marquez ce à quoi elle mène, ou laissez-la.',
  },
  nearEdge: {
    say: (mm, limit) => `Du cuivre est à ${mm} du bord (limite ${limit}).`,
    do: 'Tenez-le à l’écart de la coupe\u00a0: un bord coupé peut le soulever.',
  },
  lookHere: 'À regarder ici\u00a0: ce n’est pas sûr.',
  settleByEye: 'Regardez de près, ou reprenez une photo.',
  notSeen: {
    joints: 'Si l’adhésif conduit là où le ruban recouvre le ruban ou qu’une LED est posée dessus.',
    parts: 'Une LED morte ou une pile vide.',
    patches: 'Le cuivre sous une pièce isolante\u00a0: tenu pour ce que dit la carte.',
    covered: 'Le cuivre sous les LED et la pile\u00a0: tenu pour continu là où il entre.',
    upperFace: 'Si quelque chose touche la face supérieure de la pile\u00a0: aucun endroit n’est marqué.',
    noCell: 'Quelles LED s’allument\u00a0: aucune pile n’est encore marquée.',
    contacts: 'Si un rabat ou un doigt presse assez fort pour fermer son contact.',
    fineGaps: (mm) => `Les coupures plus fines que ${mm}\u00a0: cette photo n’est pas assez nette ou grande.`,
  },
};
