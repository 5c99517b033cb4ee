import type { Catalogue } from '../catalogue.ts';

/** Megabytes of 10^6 bytes, whole. */
const mo = (bytes: number) => `${Math.ceil(bytes / 1e6)} Mo`;

export const offlineWords: Catalogue['offline'] = {
  fetching: (bytes) =>
    `Première visite\u00a0: jusqu’à ${mo(bytes)} sont chargés une fois, pour que tout marche ensuite sans réseau.`,
  ready: 'Gardé sur cet appareil\u00a0: marche sans réseau.',
  newer:
    'Un Foilproof plus récent est là. La carte est gardée\u00a0; la page se recharge quand vous le dites.',
  take: 'Le charger maintenant',
};
