import type { Catalogue } from '../catalogue.ts';

export const photoWords: Catalogue['photo'] = {
  empty: (name) => `${name} ist leer (0 Byte). Das Foto neu wählen oder neu aufnehmen.`,
  notAnImage: (name) => `${name} ist kein lesbares Foto. Ein JPEG-, PNG- oder WebP-Bild wählen.`,
  otherKind: (name, kind) =>
    `${name} ist eine ${kind.toUpperCase()}-Datei, die hier nicht gelesen wird. Als JPEG, PNG oder WebP ausgeben und das wählen.`,
  heic: (name) =>
    `${name} ist ein HEIC-Foto, das hier nicht entschlüsselt werden kann. Als JPEG ausgeben ` +
    `(Telefon: Einstellungen zum Teilen oder zur Kamera, „größte Kompatibilität“; Rechner: öffnen und als JPEG speichern) und das wählen.`,
  truncated: (name) =>
    `${name} bricht vor dem Ende ab oder ist beschädigt. Neu von der Kamera kopieren oder neu aufnehmen.`,
  tooSmall: (name, width, height) =>
    `${name} hat nur ${width} x ${height} Bildpunkte: zu wenige, um eine Leiterbahn zu zeigen. Das Foto in voller Größe verwenden.`,
  tooLarge: (name, megapixels, limit) =>
    `${name} hat ${megapixels} Megapixel; gelesen werden höchstens ${limit}. Verkleinern (10 Bildpunkte je mm genügen) und das wählen.`,
  perMm: (pixels) => `${pixels} Bildpunkte je mm`,
  perInch: (pixels) => `${pixels} Bildpunkte je Zoll`,
  tooSoft: (gap) => `zu unscharf, um hier eine Unterbrechung von ${gap} zu sehen`,
  noCanvas:
    'Dieser Browser bietet keine Zeichenfläche zum Lesen von Bildern. Einen neueren Browser oder die Befehlszeile verwenden.',
  blurred: 'Das Foto ist verwackelt: stillhalten, auf das Band scharf stellen und neu aufnehmen.',
  tooDark: 'Das Foto ist sehr dunkel: mehr Licht geben und neu aufnehmen.',
  burntOut: (percent) =>
    `${percent} % des Fotos sind ausgebrannt: Lampe oder Blatt drehen, sodass das Papier nicht spiegelt, und neu aufnehmen.`,
};
