import type { Catalogue } from '../catalogue.ts';

export const sheetWords: Catalogue['sheet'] = {
  noOutline: 'La base n’a pas été trouvée toute seule. Posez les quatre poignées sur ses coins.',
  unsureOutline: 'La base a été trouvée, mais sans certitude. Vérifiez les quatre poignées.',
  bowed: (much) =>
    `La feuille est bombée ou froissée\u00a0: ses bords s’écartent jusqu’à ${much}. Aplatissez-la et reprenez la photo, ou continuez avec prudence.`,
  scaleOff: (percent, seen, kind, real) =>
    `La pile mesure ${seen}, mais une ${kind} fait ${real}\u00a0: l’échelle est fausse de ${percent}\u00a0%. Vérifiez le format de la base et les coins.`,
};
