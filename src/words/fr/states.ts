import type { Catalogue } from '../catalogue.ts';

export const stateWords: Catalogue['states'] = {
  atRest: 'au repos',
  cellPressed: 'pile pressée',
  pressed: (contact) => `${contact} pressé`,
  stroke: (step) => `balayage ${step}`,
  everything: 'tout pressé',
};
