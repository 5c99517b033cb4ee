import type { Catalogue } from '../catalogue.ts';

export const sheetWords: Catalogue['sheet'] = {
  noOutline: 'Das Grundblatt wurde nicht von selbst gefunden. Die vier Griffe auf seine Ecken legen.',
  unsureOutline: 'Das Grundblatt wurde gefunden, aber nicht sicher. Die vier Griffe prüfen.',
  bowed: (mm) =>
    `Das Blatt ist gewölbt oder geknickt: Seine Kanten weichen bis zu ${mm} mm ab. Flach drücken und neu aufnehmen, oder mit Vorsicht weitermachen.`,
  scaleOff: (percent, seenMm, kind, trueMm) =>
    `Die Zelle misst ${seenMm} mm, eine ${kind} hat aber ${trueMm} mm: Der Maßstab ist um ${percent} % falsch. Größe des Grundblatts und Ecken prüfen.`,
};
