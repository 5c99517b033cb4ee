import type { Catalogue } from '../catalogue.ts';

export const learned: Catalogue['learned'] = {
  weightsNotLoaded: (file, why) =>
    `Le réseau entraîné ${file} n’a pas pu être chargé (${why})\u00a0; le contrôle continue sans lui. Rechargez la page, ou vérifiez que public/models est complet.`,
};
