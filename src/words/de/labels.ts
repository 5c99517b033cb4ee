import type { Catalogue } from '../catalogue.ts';

const mb = (bytes: number) => `${Math.ceil(bytes / 1e6)} MB`;

export const labelWords: Catalogue['labels'] = {
  heading: 'Auf dem Blatt geschrieben',
  lead: (bytes) =>
    `Plankennung, LED-Namen, Pluszeichen und der Typ auf der Knopfzelle lassen sich vom Foto ablesen. Das Lesewerk (${mb(bytes)}) wird einmal geladen.`,
  read: 'Beschriftung lesen',
  again: 'Noch einmal lesen',
  reading: (percent) => `Beschriftung wird gelesen: ${percent} %`,
  stop: 'Lesen abbrechen',
  nothing: 'Nichts gelesen, was hier hilft.',
  agrees: (count) =>
    `${count} ${count === 1 ? 'Beschriftung stimmt' : 'Beschriftungen stimmen'} mit der Karte überein.`,
  sure: (percent) => `zu ${percent} % sicher gelesen`,
  nameLamp: (lamp, as) => `LED ${lamp} nach ihrer Beschriftung ${as} nennen`,
  nameAll: (count) => `Alle ${count} LEDs nach ihrer Beschriftung nennen`,
  ask: (as) => `Welche LED ist ${as}? Die Beschriftung gehört nicht eindeutig zu einer.`,
  askLamp: (lamp) => `LED ${lamp}`,
  flip: (lamp) => `+ und − der LED ${lamp} tauschen: Am anderen Ende steht ein +`,
  cell: (kind) => `Die Knopfzelle als ${kind} führen`,
  marked: (kind) => `Auf der Knopfzelle steht ${kind}: so übernehmen, Plusseite oben`,
  title: (title) => `Der Karte den Titel „${title}“ geben`,
  tagAgrees: (tag) => `Für den vorliegenden Plan gedruckt: ${tag}.`,
  tagOther: (tag) =>
    `Für einen anderen Plan gedruckt: ${tag}. Der vorliegende hat eine andere Kennung, oder es gibt keinen.`,
  tagSize: (width, height) => `Die gedruckte Größe nehmen, ${width} x ${height}`,
  tagPlan: (title) => `Den Plan von „${title}“ nehmen, der diese Kennung hat`,
  upsideDown: 'Die Schrift steht auf dem Kopf: Das Blatt liegt verkehrt herum.',
  turn: 'Das Blatt um eine halbe Drehung wenden',
};
