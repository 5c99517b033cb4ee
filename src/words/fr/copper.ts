import type { Catalogue } from '../catalogue.ts';

export const copperWords: Catalogue['copper'] = {
  troubles: {
    'burnt-out':
      'Une partie de la feuille est brûlée au blanc, où ruban et papier se ressemblent. Déplacez la lampe de côté ou baissez l’exposition, et reprenez la photo.',
    'too-dark':
      'Une partie de la feuille est dans une ombre trop profonde pour distinguer ruban et papier. Donnez plus de lumière et reprenez la photo.',
    'odd-shapes':
      'Ce qui ressemble ici à du cuivre n’a pas la forme de pistes\u00a0: peinture, ombre ou lumière peuvent gêner. Touchez le ruban en deux ou trois endroits pour montrer à quoi il ressemble.',
    doubtful:
      'Une bonne part de ce qui peut être du ruban ne se distingue pas sûrement du papier. Touchez le ruban en deux ou trois endroits, ou reprenez la photo sous une lumière égale.',
    disagree:
      'Deux façons de voir le cuivre ne s’accordent pas sur cette photo. Examinez le masque, corrigez-le au pinceau, ou reprenez la photo sous une lumière égale.',
    'no-copper':
      'Aucun ruban de cuivre n’a été trouvé sur cette feuille. S’il y en a, touchez-le en deux ou trois endroits, ou reprenez la photo sous une lumière égale.',
    'no-nets':
      'Les réseaux entraînés n’ont pas pu être chargés ; le cuivre n’a été reconnu que par sa couleur et sa forme, et plus de choses peuvent passer pour fausses qu’il n’y en a. Rechargez la page avec une connexion, ou vérifiez que les modèles sont complets, puis recommencez la vérification.',
  },
  noShots: 'Il n’y a pas de photo de cette feuille à lire.',
  shotsDiffer:
    'Les photos ne sont pas redressées au même format. Réglez pour toutes le même format de base et la même marge.',
  shotLeftOut: {
    outline: 'sa feuille n’a pas pu être trouvée avec certitude',
    misfit: 'elle ne se superpose pas à la première',
  },
  secondShot:
    'Inclinez un peu la lampe ou la feuille et prenez encore une photo\u00a0: les reflets bougent, une vraie coupure reste.',
};
