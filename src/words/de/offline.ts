import type { Catalogue } from '../catalogue.ts';

const mb = (bytes: number) => `${Math.ceil(bytes / 1e6)} MB`;

export const offlineWords: Catalogue['offline'] = {
  fetching: (bytes) =>
    `Erster Besuch: Bis zu ${mb(bytes)} werden einmal geladen, damit danach alles ohne Netz geht.`,
  ready: 'Auf diesem Gerät abgelegt: geht ohne Netz.',
  newer: 'Ein neueres Foilproof ist da. Die Karte bleibt erhalten; neu geladen wird auf Wunsch.',
  take: 'Jetzt laden',
};
