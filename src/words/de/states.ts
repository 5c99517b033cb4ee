import type { Catalogue } from '../catalogue.ts';

export const stateWords: Catalogue['states'] = {
  atRest: 'in Ruhe',
  cellPressed: 'Zelle gedrückt',
  pressed: (contact) => `${contact} gedrückt`,
  stroke: (step) => `Strich ${step}`,
  everything: 'alles gedrückt',
};
