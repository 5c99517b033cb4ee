import type { Catalogue } from '../catalogue.ts';

export const learned: Catalogue['learned'] = {
  weightsNotLoaded: (file, why) =>
    `Das trainierte Netz ${file} konnte nicht geladen werden (${why}); die Prüfung läuft ohne es weiter. Seite neu laden oder prüfen, ob public/models vollständig ist.`,
};
