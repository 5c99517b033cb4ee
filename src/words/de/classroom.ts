import type { Catalogue } from '../catalogue.ts';

export const classroomWords: Catalogue['classroom'] = {
  heading: 'Viele Karten nach einem Plan',
  lead: (hasPlan) =>
    hasPlan
      ? 'Die Fotos aller Karten wählen: Jedes wird gegen Plan und Teile der vorliegenden Karte geprüft.'
      : 'Die vorliegende Karte hat keinen Plan: Jedes Foto wird nur gegen ihre Teile geprüft. Für mehr zuerst den Plan zeichnen.',
  choose: 'Fotos wählen',
  shoot: 'Noch ein Foto aufnehmen',
  stop: 'Anhalten',
  goOn: 'Weiter',
  print: 'Einen Zettel je Karte drucken',
  forget: 'Diese Karten vergessen',
  progress: (done, total) => `${done} von ${total} geprüft`,
  columns: { card: 'Karte', verdict: 'Urteil', faults: 'Zu richten', check: 'Zu prüfen' },
  waiting: 'wartet',
  couldNot: 'Konnte nicht geprüft werden',
  tableLabel: 'Karten und ihre Urteile',
  slip: (card) => `Zettel für ${card}`,
  nothing: 'Nichts spricht gegen diese Karte.',
  verdicts: {
    clear: 'Bereit zum Kleben',
    'clear-once-checked': 'Bereit nach Prüfung',
    hold: 'Halt',
    none: 'Konnte nicht geprüft werden',
  },
  counted: (verdict, cards) => `${verdict}: ${cards}`,
  commonest: (fault, cards, total) => `Häufigster Fehler: ${fault}, auf ${cards} von ${total} Karten.`,
  noFault: 'Kein Fehler hält eine Karte auf.',
  notJournal: (path) =>
    `${path} ist kein Journal eines früheren Laufs. Bei --journal einen neuen Dateinamen angeben oder das Journal des Laufs, der weitergehen soll.`,
  noJournal: (path) => `Das Journal ${path} lässt sich hier nicht schreiben.`,
  resumed: (done, total) => `${done} von ${total} wurden in einem früheren Lauf geprüft.`,
};
