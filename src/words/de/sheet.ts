import type { Catalogue } from '../catalogue.ts';

export const sheetWords: Catalogue['sheet'] = {
  noOutline: 'Das Grundblatt wurde nicht von selbst gefunden. Die vier Griffe auf seine Ecken legen.',
  unsureOutline: 'Das Grundblatt wurde gefunden, aber nicht sicher. Die vier Griffe prüfen.',
  bowed: (much) =>
    `Das Blatt ist gewölbt oder geknickt: Seine Kanten weichen bis zu ${much} ab. Flach drücken und neu aufnehmen, oder mit Vorsicht weitermachen.`,
  scaleOff: (percent, seen, kind, real) =>
    `Die Zelle misst ${seen}, eine ${kind} hat aber ${real}: Der Maßstab ist um ${percent} % falsch. Größe des Grundblatts und Ecken prüfen.`,
  tapeOff: (seen, stated, percent) =>
    `Das Band ist hier ${seen} breit, der Plan hat aber ${stated}: Der Maßstab ist um ${percent} % falsch.`,
  lampsOff: (seen, stated, percent) =>
    `Die Lampen liegen hier im Mittel ${seen} auseinander, die Karte hat aber ${stated}: Der Maßstab ist um ${percent} % falsch.`,
  tooLargeTaken:
    'Etwas Größeres wurde für das Grundblatt gehalten, etwa ein Blatt darunter, oder das Grundblatt ist größer als angegeben. Die vier Ecken auf die des Grundblatts ziehen oder seine wahre Größe angeben.',
  tooSmallTaken:
    'Etwas Kleineres wurde für das Grundblatt gehalten, etwa ein Rahmen darauf, oder das Grundblatt ist kleiner als angegeben. Die vier Ecken auf die des Grundblatts ziehen oder seine wahre Größe angeben.',
};
