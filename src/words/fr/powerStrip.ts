import type { Catalogue } from '../catalogue.ts';
import { decimal } from '../numbers.ts';

export const powerStripWords: Catalogue['powerStrip'] = {
  heading: 'S’allumera-t-elle, également, combien de temps',
  noLamps: 'Marquez les LED et la pile, et les courants sont calculés ici.',
  state: 'État',
  cellAge: 'Charge restant dans la pile',
  charge: (percent) => `${percent}\u00a0%`,
  fresh: 'neuve',
  spent: 'presque vide',
  strip: (state) => `LED dans l’état «\u00a0${state}\u00a0», dessinées aussi vives qu’elles paraîtraient`,
  lamp: (id, colour, look, mA) => `${id}, ${colour}\u00a0: ${look}, ${mA}`,
  looks: { lit: 'allumée', dim: 'faible', dark: 'éteinte' },
  mA: (mA) => (mA >= 0.005 ? `${decimal(mA, mA < 1 ? 2 : 1)} mA` : 'aucun courant'),
  tells: 'À quoi s’attendre',
  advice: 'Que changer',
  joints: 'Recouvrements et contacts à presser d’abord',
  lesson: 'Pourquoi les contacts comptent et le ruban non',
  working: 'Calcul…',
};
