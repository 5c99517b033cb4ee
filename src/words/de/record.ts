import type { Catalogue } from '../catalogue.ts';

export const recordWords: Catalogue['record'] = {
  untitled: 'Karte ohne Titel',
  heading: (title) => `${title}: Prüfprotokoll`,
  verdict: {
    clear: 'Bereit zum Kleben',
    'clear-once-checked': (open) => `Bereit nach Prüfung: ${open} von Hand zu klären`,
    hold: (holding) => `Halt: ${holding} zu richten`,
  },
  madeFrom: (photo, width, height) => `Aus ${photo}. Grundblatt ${width} x ${height}.`,
  readAt: (density, gap) =>
    `Das Foto zeigt ${density} auf dem Grundblatt; die schmalste Unterbrechung, die es zeigen kann, ist ${gap}.`,
  sections: {
    sheet: 'Das Blatt mit seinen Korrekturzeichen',
    findings: 'Befunde',
    redrawn: 'Die Schaltung maßstäblich nachgezeichnet',
    diagram: 'Schaltplan',
    states: 'Was in welchem Zustand leuchtet',
    power: 'Strom und Laufzeit',
    nets: 'Netze',
    parts: 'Teile',
    cuts: 'Leiterbahnen',
    steps: 'Fotos nach Schritten',
    notSeen: 'Nicht gesehen',
    cautions: 'Vorsicht',
    note: 'Notiz',
  },
  certainty: (percent) => `Sicherheit ${percent} %`,
  toDo: 'Zu tun',
  toSettle: 'Klärt es',
  settledBy: (note) => (note ? `Von Hand geklärt: ${note}` : 'Von Hand geklärt.'),
  noFindings: 'Nichts spricht dagegen.',
  nothingUnseen: 'Dem Foto war nichts verborgen.',
  figure: {
    sheet: (count) =>
      count === 1
        ? 'Das entzerrte Foto mit 1 Korrekturzeichen'
        : `Das entzerrte Foto mit ${count} Korrekturzeichen`,
    cutOut: (number) => `Das Foto um Zeichen ${number}`,
    redrawn: 'Kupfer wie verfolgt, LEDs mit ihrem Plus, Zelle, Kontakte und Isolierstücke; maßstäblich',
    lamps:
      'Jede LED so hell, wie sie aussähe, in jedem Zustand: Ihr Hof ist ihr Licht, ein Kreuz ist eine dunkle LED',
    diagram: 'LEDs, Zelle und Kontakte in genormten Schaltzeichen; die Linien sind Netze, keine Leiterbahnen',
  },
  redrawn: {
    up: (face) => `${face} oben`,
    bar: (long) => `${long}; nachmessen, ob der Druck stimmt`,
    ohm: (ohm) => `${ohm} Ohm`,
  },
  power: {
    advice: 'Damit es besser leuchtet',
    joints: 'Zuerst anzudrücken',
    lesson: 'Warum Verbindungen zählen und das Band nicht',
  },
  states: {
    caption: 'LED-Strom in mA je Zustand; leuchtet, schwach oder dunkel',
    state: 'Zustand',
    cell: 'Knopfzelle',
    shorted: 'kurzgeschlossen',
    looks: { lit: 'leuchtet', dim: 'schwach', dark: 'dunkel' },
  },
  nets: {
    caption: 'Verbundenes Kupfer und was darauf sitzt',
    head: ['Netz', 'Stücke', 'Füße', 'Kupfer'],
  },
  parts: {
    caption: 'Was die Karte braucht',
    head: ['Teil', 'Was', 'Wo'],
    lamp: (colour) => `LED, ${colour}`,
    series: (ohm) => `mit ${ohm} Ohm in Reihe`,
    own: (volt, mA) => `${volt} V bei ${mA} mA`,
    cell: (kind, up) => `${kind}, ${up} oben`,
    flap: 'Klappe',
    patch: 'Isolierstück',
    press: 'Kontakt, gedrückt',
    stroke: (order) => `Kontakt, gestrichen${order}`,
    cellName: 'Zelle',
    pads: (plus, minus) => `+ bei ${plus}, - bei ${minus}`,
  },
  strips: {
    caption: 'Kupfer, wie es auf dem Blatt liegt',
    head: ['Stück', 'Netz', 'Übliche Breite', 'Mittellinie', 'Kupfer'],
    planned: 'Zuschnitt, in der Reihenfolge des Klebens',
    plannedHead: ['Leiterbahn', 'Netz', 'Breite', 'Liegt', 'Falten', 'Überlapp.', 'Schnitt'],
    total: (length) =>
      `Zusammen ${length} zuzuschneiden: Jede Faltung und jedes Ende, das eine andere Bahn überlappt, braucht eine Bandbreite mehr, als liegt.`,
  },
  steps: {
    base: 'das Grundblatt',
    again: 'weitere Aufnahme des Grundblatts',
    after: (patch) => `das Grundblatt mit Isolierstück ${patch}`,
    front: 'das Deckblatt',
  },
  step: (name, step, taken) => [step, name, taken].filter(Boolean).join(', '),
  page: (number, of) => `${number} / ${of}`,
  unknown: 'nicht angegeben',
};
