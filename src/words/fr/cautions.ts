import type { Catalogue } from '../catalogue.ts';

export const cautionWords: Catalogue['cautions'] = {
  heading: 'Précautions',
  defer:
    'Ce sont des précautions générales. Les règles de votre pays, le fabricant de la pile et les professionnels agréés passent avant elles.',
  items: [
    {
      title: 'Une pile bouton avalée peut tuer',
      text: 'Une pile au lithium de 20 mm coincée dans l’œsophage le perce en deux heures, et même vide elle blesse. Si une pile a pu être avalée, ou mise dans un nez ou une oreille, allez aussitôt aux urgences et appelez le centre antipoison de votre pays\u00a0; n’attendez pas de signes et ne faites pas vomir l’enfant. Gardez les piles, seules ou dans les cartes, hors de portée des petits enfants, et ne donnez jamais à un petit enfant une carte avec une pile.',
    },
    {
      title: 'Enfermez la pile',
      text: 'Collez ou cousez le logement de la pile pour qu’un enfant ne puisse l’ouvrir. Le ruban mousse seul ne fait pas un compartiment sûr. Ce qui est vendu ou distribué peut devoir suivre des règles sur les compartiments et avertissements des piles bouton, comme 16 CFR part 1263 avec UL 4200A aux États-Unis\u00a0; demandez ce qui vaut chez vous.',
    },
    {
      title: 'Une pile en court-circuit chauffe',
      text: 'Le cuivre qui joint les deux faces fait chauffer la pile en moins d’une minute\u00a0; elle peut couler ou dégazer. Retirez-la aussitôt, par le bord, avec quelque chose qui ne conduit pas, posez-la dehors sur de la pierre ou dans du sable, et ne l’utilisez plus. Ne posez jamais de piles en vrac sur du ruban ni l’une sur l’autre\u00a0; ne les rechargez, chauffez, coupez ni percez jamais.',
    },
    {
      title: 'Par la poste',
      text: 'Les piles au lithium sont des marchandises dangereuses par la poste. Montées dans un appareil, elles sont souvent permises en petit nombre, en vrac non\u00a0; la poste décide, demandez-lui avant d’envoyer. Mettez une languette isolante entre pile et piste, pour que la carte ne puisse ni s’allumer ni se court-circuiter en route.',
    },
    {
      title: 'Les yeux',
      text: 'Ne regardez pas de près une LED vive, et n’utilisez pas de LED ultraviolettes là où des enfants peuvent les regarder.',
    },
    {
      title: 'Lames et bords',
      text: 'Les bords du cuivre et les couteaux de précision coupent. Coupez en vous éloignant de la main, sur un tapis, et gardez les lames loin des enfants.',
    },
    {
      title: 'Piles bouton seulement',
      text: 'Ceci contrôle des cartes alimentées par une seule pile bouton. Ne reliez jamais un tel circuit au secteur, à un chargeur ni à des accus au lithium\u00a0; laissez tout cela à un professionnel agréé.',
    },
  ],
};
