import type { Catalogue } from '../catalogue.ts';

export const sheetWords: Catalogue['sheet'] = {
  noOutline: 'La base n’a pas été trouvée toute seule. Posez les quatre poignées sur ses coins.',
  unsureOutline: 'La base a été trouvée, mais sans certitude. Vérifiez les quatre poignées.',
  bowed: (much) =>
    `La feuille est bombée ou froissée\u00a0: ses bords s’écartent jusqu’à ${much}. Aplatissez-la et reprenez la photo, ou continuez avec prudence.`,
  scaleOff: (percent, seen, kind, real) =>
    `La pile mesure ${seen}, mais une ${kind} fait ${real}\u00a0: l’échelle est fausse de ${percent}\u00a0%. Vérifiez le format de la base et les coins.`,
  tapeOff: (seen, stated, percent) =>
    `Le ruban fait ici ${seen} de large, mais le plan indique ${stated}\u00a0: l’échelle est fausse de ${percent}\u00a0%.`,
  lampsOff: (seen, stated, percent) =>
    `Les lampes sont ici à ${seen} les unes des autres en moyenne, mais la carte indique ${stated}\u00a0: l’échelle est fausse de ${percent}\u00a0%.`,
  tooLargeTaken:
    'Quelque chose de plus grand que la base a été pris pour elle, par exemple une feuille posée dessous, ou la base est plus grande qu’indiqué. Tirez les quatre coins sur ceux de la base, ou indiquez son vrai format.',
  tooSmallTaken:
    'Quelque chose de plus petit que la base a été pris pour elle, par exemple un cadre dessiné dessus, ou la base est plus petite qu’indiqué. Tirez les quatre coins sur ceux de la base, ou indiquez son vrai format.',
};
