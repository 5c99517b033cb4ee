import type { Catalogue } from '../catalogue.ts';

export const sheetWords: Catalogue['sheet'] = {
  noOutline: 'Das Grundblatt wurde nicht von selbst gefunden. Die vier Griffe auf seine Ecken legen.',
  unsureOutline: 'Das Grundblatt wurde gefunden, aber nicht sicher. Die vier Griffe prüfen.',
  bowed: (much) =>
    `Das Blatt ist gewölbt oder geknickt: Seine Kanten weichen bis zu ${much} ab. Flach drücken und neu aufnehmen, oder mit Vorsicht weitermachen.`,
  scaleOff: (percent, seen, kind, real) =>
    `Die Zelle misst ${seen}, eine ${kind} hat aber ${real}: Der Maßstab ist um ${percent} % falsch. Größe des Grundblatts und Ecken prüfen.`,
};
