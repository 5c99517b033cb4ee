import type { Catalogue } from '../catalogue.ts';
import { pointed } from '../numbers.ts';

const figure = (value: number) => pointed(String(value));

export const powerWords: Catalogue['power'] = {
  twice: (id) => `Deux parties du circuit s’appellent ${id}. Donnez un nom propre à chacune.`,
  badOhm: (id, ohm) =>
    `${id} a une résistance de ${figure(ohm)} ohm, ce que rien ne peut avoir. Mettez 0 ou plus.`,
  badVolt: (id, volt) => `La pile ${id} a ${figure(volt)} V. Mettez une tension de 0 à 100 V.`,
  badCellOhm: (id, ohm) =>
    `La pile ${id} a une résistance interne de ${figure(ohm)} ohm, un court-circuit n’aurait pas de réponse. Mettez 0,001 ohm ou plus.`,
  badLamp: (id) => `La courbe de la LED ${id} est impossible. Redonnez sa tension et son courant.`,
  noConvergence: (steps, part) =>
    `Les courants ne se sont pas stabilisés en ${steps} pas\u00a0; la partie qui ne s’équilibre pas est ${part}. Vérifiez ses valeurs.`,

  afloat: (state, lamps) =>
    `${state}\u00a0: le cuivre sous ${lamps} n’atteint aucune face de la pile, rien ne peut donc y circuler.`,
  cellShorted: (state) =>
    `${state}\u00a0: les deux faces de la pile sont sur un même morceau de cuivre. Elle chauffe\u00a0: retirez-la aussitôt.`,
  lampOnOneNode: (state, lamp) =>
    `${state}\u00a0: les deux bornes de ${lamp} sont sur un même morceau de cuivre, il ne lui reste aucune tension.`,

  noCell: 'Aucune pile n’est placée, rien ne peut donc encore s’allumer. Placez-la pour voir les courants.',
  cell: (kind, percent, volt, ohm) =>
    `${kind} à ${percent}\u00a0% de sa charge\u00a0: ${volt} V derrière ${ohm} ohm.`,
  nothingLit: 'Aucune LED ne s’allume dans aucun état.',
  load: {
    none: () => '',
    within: (state, mA, kind) =>
      `Au plus ${mA} mA sont tirés (${state})\u00a0: une ${kind} donne cela pendant des heures.`,
    'over-continuous': (state, mA, kind, continuous, pulse) =>
      `Au plus ${mA} mA sont tirés (${state}). Une ${kind} est faite pour ${figure(continuous)} mA en continu et ${figure(pulse)} mA en brèves impulsions\u00a0: bien pour des pressions, pas pour rester allumé.`,
    'over-pulse': (state, mA, kind, continuous, pulse) =>
      `Au plus ${mA} mA sont tirés (${state}), plus que les ${figure(pulse)} mA qu’une ${kind} donne en brèves impulsions (${figure(continuous)} mA en continu). Elle fléchit en quelques secondes et s’use vite.`,
    shorted: (state, mA) =>
      `${state}\u00a0: la pile est en court-circuit et donne ${mA} mA d’un coup. Elle chauffe et se ruine\u00a0: retirez-la.`,
  },
  even: (state, ratio) =>
    `Les LED sont égales (${state})\u00a0: la plus vive a ${ratio} fois le courant de la plus faible.`,
  uneven: (state, brightest, dimmest, ratio) =>
    `${state}\u00a0: ${brightest} a ${ratio} fois le courant de ${dimmest}.`,
  robbed: (state, robbers, robbed, volt) =>
    `${state}\u00a0: ${robbers} privent ${robbed} de courant. Les LED de la famille rouge s’allument vers 2 V et retiennent la pile à ${volt} V\u00a0; le blanc, le bleu et le vrai vert demandent environ 2,8 V et restent éteints.`,
  robbedByOne: (state, robber, robbed, volt) =>
    `${state}\u00a0: ${robber} prive ${robbed} de courant. Une LED de la famille rouge s’allume vers 2 V et retient la pile à ${volt} V\u00a0; le blanc, le bleu et le vrai vert demandent environ 2,8 V et restent éteints.`,
  runTime: (state, lit, bright, presses) =>
    `Tenue pressée (${state}), une pile neuve garde allumé ce qui s’allume environ ${lit}, vif environ ${bright}\u00a0; soit quelque ${presses} pressions de cinq secondes. Une estimation\u00a0: les piles diffèrent de moitié.`,
  hours: (hours) => `${hours} heures`,
  endures: 'Ce qu’une pile neuve allume reste allumé jusqu’à ce qu’elle soit vide.',
  fadesAt: (percent, lamps) =>
    `À ${percent}\u00a0% de charge restante, ${lamps} ${lamps.includes(',') ? 'sont éteintes' : 'est éteinte'}.`,
  spread: (lamp, low, high) =>
    `Hasard des LED et des joints\u00a0: ${lamp} reçoit entre ${low} et ${high} mA dans neuf cartes sur dix.`,
  darkShare: (lamp, percent) => `Dans ${percent}\u00a0% de telles cartes ${lamp} reste éteinte.`,

  bandColours: {
    black: 'noir',
    brown: 'marron',
    red: 'rouge',
    orange: 'orange',
    yellow: 'jaune',
    green: 'vert',
    blue: 'bleu',
    violet: 'violet',
    grey: 'gris',
    white: 'blanc',
    gold: 'or',
  },
  advice: {
    resistor: (lamps, ohm, bands, ratio, mA) =>
      `Mettez ${figure(ohm)} ohm (${bands}) en série avec ${lamps}\u00a0: les LED sont alors à un facteur ${ratio} l’une de l’autre, vers ${mA} mA.`,
    'split-colours': (low, high) =>
      `Ou séparez les couleurs\u00a0: ${low} sur une pile, ${high} sur une autre.`,
    'fewer-lamps': (state, now, most) =>
      `${now} LED à la fois (${state}), c’est beaucoup pour une pile\u00a0: ${most} resteraient vives dans ce qu’elle donne. Allumez-les tour à tour, ou prenez-en moins.`,
    'second-cell': (mANow, mAThen) =>
      `Une seconde pile du même type, neuve et côte à côte (+ contre +), fait passer la LED la plus faible de ${mANow} à ${mAThen} mA.`,
    'limit-current': (lamps, mA, ohm, bands, mAThen) =>
      `${lamps} tireraient ${mA} mA chacune. Mettez ${figure(ohm)} ohm (${bands}) en série avec chacune\u00a0: ${mAThen} mA suffisent pour être vif et la pile dure.`,
    'which-green': (lamps) =>
      `Le vert est compté comme vrai vert (environ 3 V) pour ${lamps}. Le vert jaunâtre est une LED de 2 V\u00a0: si c’est la vôtre, choisissez vert-jaune.`,
    'cell-too-low': (volt, lamps) =>
      `Une pile de ${volt} V ne peut allumer ${lamps}. Prenez une pile au lithium de 3 V.`,
  },

  jointNames: {
    seam: (place) => `le recouvrement à ${place}`,
    contact: (id) => `le contact ${id}`,
    'lamp-leg': (id) => `les pattes de ${id}`,
    legs: (ids) => `les pattes de ${ids}, chacune pour sa LED`,
    'cell-face': (face) => `la face ${face} de la pile`,
  },
  jointNeed: (joint, dims, dimOhm, darkOhm) =>
    `${joint}\u00a0: au-delà de ${dimOhm} ohm ${dims} faiblit, au-delà de ${darkOhm} ohm s’éteint.`,
  jointsFirst: 'Joints à presser d’abord, le plus sensible en tête\u00a0:',

  tapeLesson: (length, width, ohm, splitOhm, percent) =>
    `Pourquoi la largeur du ruban n’importe pas\u00a0: tout le ruban de cette carte bout à bout (${length}, large de ${width}) fait ${ohm} ohm. Fendu par le milieu il fait ${splitOhm} ohm, et aucune LED ne change de plus de ${percent}\u00a0%.`,
  contactLesson:
    'Pourquoi les joints importent\u00a0: du cuivre pressé sur du cuivre fait un dixième d’ohm, du cuivre simplement posé 1 à 10 ohm, du cuivre sur une colle ordinaire aucun contact. Un seul mauvais joint pèse bien plus que tout le ruban.',
  more: (count) => `${count} de plus`,
  and: (names) =>
    names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} et ${names.at(-1) ?? ''}`,
};
