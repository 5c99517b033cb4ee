import type { Catalogue } from '../catalogue.ts';

const maskFaults = {
  open: 'unterbrochen',
  short: 'Kurzschluss',
  nibble: 'Kerbe',
  spur: 'Sporn',
  'pin-hole': 'Nadelloch',
  stray: 'loses Kupfer',
  missing: 'fehlt ganz',
} as const;

const sides = {
  dark: 'als Leiter gilt die dunkle Seite',
  light: 'als Leiter gilt die helle Seite',
  copper: 'als Leiter gilt, was kupferfarben ist',
} as const;

const usage =
  'foilproof compare --built A.png --plan B.png [--px-per-mm N] [--tolerance-px N] [--conductor dark|light|copper] [--json]';

export const planWords: Catalogue['plan'] = {
  compareUsage: usage,
  compareNeeds: (option) => `compare braucht --${option} DATEI. Gebrauch: ${usage}`,
  unknownOption: (option) => `compare kennt ${option} nicht. Gebrauch: ${usage}`,
  notPositive: (option, given) => `--${option} erwartet eine Zahl über 0, nicht „${given}“.`,
  notASide: (given) => `--conductor erwartet dark, light oder copper, nicht „${given}“.`,
  noFile: (path) => `Eine Datei ${path} gibt es nicht. Den Pfad prüfen.`,
  tooUnlike: (built, plan) =>
    `${built} und ${plan} sind zu verschieden groß, um aufeinanderzuliegen. Erst beide auf einen Maßstab entzerren.`,
  conductorSaid: (name, side, guessed) =>
    `${name}: ${sides[side]}${guessed ? ' (mit --conductor ändern, falls das falsch ist)' : ''}.`,
  maskFault: (kind) => maskFaults[kind],
  maskFaultLine: (kind, x, y, size, net) =>
    `${maskFaults[kind].padEnd(16)} bei ${x}; ${y}   ${size}${net ? '   ändert ein Netz' : ''}`,
  progress: (laid, of) => `${laid} von ${of} ${of === 1 ? 'Leiterbahn' : 'Leiterbahnen'} gelegt`,
  compareClear: 'Gleiche Netze: keine Unterbrechung und kein Kurzschluss gegen den Plan.',
  compareHolds: (opens, shorts, missing) =>
    `Halt, gegen den Plan: ${[
      [opens, 'unterbrochen'],
      [shorts, 'kurzgeschlossen'],
      [missing, 'fehlend'],
    ]
      .filter(([n]) => n)
      .map(([n, word]) => `${n} ${word}`)
      .join(', ')}.`,

  page: {
    heading: 'Den Plan zeichnen',
    lead: 'Maßstäblich, über dem Bild des Deckblatts oder auf leerem Papier. Enden rasten auf LED-Füßen ein, Ecken auf 45 und 90 Grad.',
    sheetLabel: 'Der Plan auf dem Grundblatt, maßstäblich',
    keys: 'Entf löscht das Gewählte, Esc lässt die begonnene Leiterbahn fallen. B gehalten wechselt zwischen Foto und Plan.',
    tool: 'Legen',
    tools: {
      pick: 'Wählen, schieben',
      strip: 'Leiterbahn',
      lamp: 'LED',
      cell: 'Knopfzelle',
      contact: 'Kontakt',
      patch: 'Isolierstück',
      flap: 'Klappe',
      artwork: 'Bild',
    },
    hints: {
      pick: 'Leiterbahn oder Teil antippen zum Ändern; Ecke oder Ende ziehen, um es zu verschieben.',
      strip: 'Antippen, wo die Leiterbahn beginnt.',
      stripOn: 'Jede Ecke antippen; zum Ende die letzte Stelle noch einmal oder „Leiterbahn beenden“.',
      lamp: 'Das Plus-Ende einer LED antippen, wo das Bild Licht braucht.',
      lampMinus: 'Nun ihr Minus-Ende antippen.',
      cell: 'Die Mitte des Platzes der Zelle antippen.',
      contact:
        'Eine Öffnung antippen, die Finger oder Klappe schließt, oder von einer Seite zur anderen ziehen.',
      patch: 'Von Ecke zu Ecke des Papiers ziehen, das zwei Leiterbahnen trennt.',
      flap: 'Längs der Kante ziehen, an der die Klappe hängt.',
      artwork: 'Zieh das Bild dorthin, wo es hingehört, oder an einer Ecke in Form.',
      corners: (name) => `Die Ecke ${name} des Deckblatts im Bild antippen.`,
      cornerNames: ['oben links', 'oben rechts', 'unten rechts', 'unten links'],
      measureFrom: 'Eine von zwei Stellen antippen, deren Abstand bekannt ist.',
      measureTo: 'Nun die andere antippen.',
    },
    net: 'Netz',
    width: 'Bandbreite',
    finish: 'Leiterbahn beenden',
    drop: 'Fallen lassen',
    removePicked: 'Gewähltes löschen',
    base: 'Größe des Grundblatts',
    snapped: {
      pad: (to) => `eingerastet auf ${to}`,
      spacing: (to) => `gleichmäßig neben ${to}`,
      angle: 'auf einem Faltwinkel eingerastet',
      none: '',
    },

    startHeading: 'Ein Anfang',
    suggest: 'Einen Weg vorschlagen',
    suggesting: 'Ein Weg ohne Kreuzungen wird gesucht …',
    suggestion: (strips, tape, folds, crossings) =>
      `${strips} ${strips === 1 ? 'Leiterbahn' : 'Leiterbahnen'}, ${tape} Band, ${folds} Falten, ${
        crossings ? `${crossings} über Isolierstücke zu kreuzen` : 'keine Kreuzung'
      }.`,
    tracedProposal: (strips) => `${strips === 1 ? 'Eine Leiterbahn' : `${strips} Leiterbahnen`} nachgezogen.`,
    noRoute: 'Für keine Leiterbahn fand sich ein Weg. LEDs und Zelle mehr Platz geben.',
    sketchLost:
      'Die Kanten der Skizze wurden nicht gefunden. Das ganze Blatt auf einen dunkleren Tisch legen und neu aufnehmen.',
    nothingTraced:
      'Auf der Skizze fand sich kein Strich. Mit kräftigen dunklen Linien auf weißes Papier zeichnen und das ganze Blatt aufnehmen.',
    accept: 'Nehmen',
    refuse: 'Lassen',
    needsParts: 'Ein Weg braucht die Zelle und mindestens eine LED.',
    fromPhoto: 'Das Foto der Karte nachziehen',
    fromSketch: 'Das Foto einer Skizze nachziehen',
    tracing: 'Die Skizze wird nachgezogen …',

    artworkHeading: 'Bild darunter',
    artworkNone:
      'Ein Bild des Deckblatts unter den Plan legen, damit die LEDs dort stehen, wo es Licht braucht.',
    artworkChoose: 'Ein Bild des Deckblatts wählen',
    artworkOther: 'Ein anderes Bild wählen',
    artworkFading: 'Wie stark es zu sehen ist',
    artworkCorner: (corner) => `Deckblattbild, ${corner}`,
    artworkCornerKeys: 'Pfeiltasten bewegen um 1 mm, mit Umschalt um 10, mit Alt um 0,1.',
    artworkCorners: 'An seinen Ecken ausrichten',
    artworkMeasure: 'An zwei Stellen messen',
    artworkApart: 'Ihr Abstand',
    artworkScale: 'Maßstab setzen',
    artworkStop: 'Ausrichten beenden',
    artworkRemove: 'Das Bild wegnehmen',
    artworkAlt: 'Bild des Deckblatts',

    strips: 'Leiterbahnen, in der Reihenfolge des Legens',
    noStrips: 'Noch ist keine Leiterbahn geplant.',
    remove: (id) => `${id} entfernen`,
    removeStrip: 'Leiterbahn löschen',
    stripName: (id) => `Leiterbahn ${id}`,
    stripLine: (net, width, length) => `Netz ${net}, ${width} breit, ${length} lang`,
    corners: 'Stellen längs davon',
    corner: (n) => `Stelle ${n}`,
    cornerRemove: (n) => `Stelle ${n} entfernen`,
    earlier: 'Früher legen',
    later: 'Später legen',
    sheets: 'Isolierstücke und Klappen',
    patch: (id) => `Isolierstück ${id}`,
    flap: (id) => `Klappe ${id}`,
    patchLine: (width, height) => `${width} x ${height}`,
    flapUse: 'Was ihr Schließen bewirkt',
    flapUses: {
      cell: 'drückt die Zelle',
      press: 'schließt einen Kontakt',
      stroke: 'wird längs der Kontakte gestrichen',
    },
    liesOn: 'Liegt auf',
    onBase: 'dem Grundblatt',
    onFlap: (id) => `Klappe ${id}, Unterseite aufgeklappt`,
    beneath: 'Leiterbahnen, die darunter laufen',
    standing: {
      laid: 'gelegt',
      partly: 'teils gelegt',
      shifted: 'daneben gelegt',
      'to-lay': 'noch zu legen',
      unseen: 'nicht gesehen',
      blind: 'im Foto überstrahlt oder schwarz: nicht zu erkennen',
    },

    checksHeading: 'Was die Prüfung dazu sagt',
    checking: 'Wird geprüft …',
    checksClear: 'Nichts spricht gegen diesen Plan.',
    checksNothing: 'Eine Leiterbahn zeichnen; geprüft wird beim Zeichnen.',
    crossing: (nets) =>
      `${nets.join(' und ')} kreuzen sich hier: ein Isolierstück dazwischenlegen oder anders führen.`,
    layPatch: 'Isolierstück legen',
    at: (x, y) => `${x} von links, ${y} von oben`,

    compareHeading: 'Der Bau über dem Plan',
    wipe: 'Foto von links gezeigt bis',
    wiped: (percent) => `${percent} % der Breite`,
    blink: 'B oder dies halten, um zu wechseln',
    blinkKeys: 'Gehalten ist der Plan verborgen.',
    noBuild: 'Das Grundblatt in Schritt Foto aufnehmen, um den Bau über den Plan zu legen.',

    printHeading: 'In wahrer Größe drucken',
    paper: 'Papier',
    papers: { a4: 'A4', letter: 'Letter, 8½ x 11 Zoll' },
    print: 'PDF erstellen',
    printing: 'PDF wird erstellt …',
    printed: (name, bar) => `${name} ist fertig. Mit 100 % drucken und den Strich von ${bar} nachmessen.`,
    fileName: 'plan',

    frontHeading: 'Das gestanzte Deckblatt gegen die LEDs',
    frontLead: 'Das Deckblatt mit seinen Löchern auf dunklem Tisch aufnehmen, das ganze Blatt im Bild.',
    frontSide: 'Gezeigte Seite',
    frontSides: { back: 'seine Rückseite', face: 'seine Schauseite' },
    frontChoose: 'Dieses Foto wählen',
    frontWorking: 'Die Löcher werden vermessen …',
    frontUnsure:
      'Die Kanten des Deckblatts sind vielleicht nicht gefunden: nachsehen, ob es hier gerade auf dem Grundblatt liegt. Wenn nicht, auf dunklem Tisch mit allen vier Seiten aufnehmen.',
    frontLost:
      'Die Kanten des Deckblatts wurden nicht gefunden. Auf dunklem Tisch mit allen vier Seiten aufnehmen.',
    frontOk: (lamp, miss) => `${lamp}: Das Loch liegt darüber, ${miss} daneben.`,
    frontMiss: (lamp, miss, way) =>
      `${lamp}: Das Loch verfehlt sie um ${miss}, ${way}, von der Schauseite gesehen.`,
    frontNone: (lamp) => `${lamp}: kein Loch in der Nähe.`,
    frontWays: { left: 'zu weit links', right: 'zu weit rechts', up: 'zu hoch', down: 'zu tief' },
    frontAllRight: 'Jede LED hat ihr Loch.',
    frontNoLamps: 'Zuerst die LEDs setzen.',
  },
  nothingPlanned:
    'Die Karte hat keine geplanten Leiterbahnen, also ist nichts zu drucken. Erst den Plan zeichnen oder einen Vorschlag nehmen.',
  notAPaper: (given) => `--paper erwartet a4 oder letter, nicht „${given}“.`,
  printTitle: (title) => (title ? `Plan von ${title}` : 'Plan einer Bandschaltung'),
  baseSheet: 'Grundblatt, Kupferseite',
  baseNote:
    'Mit 100 % drucken, den Strich unten nachmessen, am Umriss ausschneiden. Die Leiterbahnen in der Reihenfolge ihrer Nummern legen; Striche über eine Ecke sind Falze. Die Marke am unteren Rand bleibt sichtbar.',
  flapSheet: (id) => `Klappe ${id}, geschlossen`,
  flapNote:
    'Wie ihre Unterseite das Grundblatt trifft, von oben durchgesehen. Mit offener Klappe geplant, ist sie am Falz gespiegelt.',
  punchFront: 'Lochschablone, Schauseite',
  punchFrontNote: 'Auf die Schauseite des Deckblatts legen und durch die Kreuze stechen.',
  punchBack: 'Lochschablone, Rückseite',
  punchBackNote: 'Gespiegelt: auf die Rückseite des Deckblatts legen und von dort stanzen.',
  foamSheet: 'Lageplan der Schaumpads',
  foamNote:
    'Die Schaumpads nach diesen Umrissen schneiden und so viele Lagen legen wie angegeben, damit das Deckblatt Zelle und LEDs nicht berührt.',
  foamLabel: (layers, high) => `${layers} x ${high}`,
  tile: (row, rows, column, columns) => `Teil: Zeile ${row} von ${rows}, Spalte ${column} von ${columns}`,
  sheetAlt: (title, strips, lamps, holes) =>
    `${title} in wahrer Größe: ${strips} Leiterbahnen, ${lamps} LEDs, ${holes} Löcher.`,
  bar: (long) => `${long}. Misst er anders, mit 100 % und ohne Anpassen an die Seite neu drucken.`,
  barAlt: (long) => `Ein Strich von ${long} zum Prüfen des Maßstabs.`,
  half: '(geteilt)',
  cutHeading: 'Zuschnitt',
  cutNote: (roll) =>
    `Zu schneidende Längen enthalten je Falte und je überlappendes Ende eine Bandbreite mehr. Band auf der Rolle: ${roll}; schmalere Leiterbahnen werden der Länge nach davon abgeteilt.`,
  cutColumns: ['Nr.', 'Leiterbahn', 'Breite', 'Liegt', 'Falten', 'Überlapp.', 'Schnitt'],
  cutTotal: (width, cut, roll) => `${width} breit: ${cut} zu schneiden, ${roll} von der Rolle.`,
  cutSum: (long) => `Zusammen ${long} von der Rolle.`,
  partsHeading: 'Teile',
  partsColumns: ['Anzahl', 'Teil'],
  lampPart: (colour) => `LED, ${colour}`,
  resistorPart: (ohm) => `Widerstand ${ohm} Ohm`,
  cellPart: (kind) => `Knopfzelle ${kind}`,
  tapePart: 'Kupferband',
  patchPart: (wider) => `Isolierstück aus Papier, je Seite ${wider} breiter als die kreuzenden Leiterbahnen`,
  foamPart: (high) => `Lage Schaumpad, ${high}`,
  stepsHeading: 'Bauen, mit einer Probe nach jedem Schritt',
  test: 'Probe:',
  steps: (strips, lamps) => [
    {
      do: 'Das Grundblatt drucken, den Strich nachmessen, ausschneiden und die Klappen falten.',
      test: 'Der Strich ist so lang, wie er sagt, und die Klappen schließen auf ihren Marken.',
    },
    ...strips.map(({ id, net }, k) => ({
      do: `Leiterbahn ${k + 1}, ${id}, legen. An einer Ecke erst von der Richtung weg falten und dann zurück; an einer Überlappung das Ende umschlagen, sodass Kupfer auf Kupfer liegt.`,
      test: `Mit Messgerät oder Zelle und LED: Die Leiterbahn leitet von Ende zu Ende${
        strips.slice(0, k).some((s) => s.net === net) ? ', auch zu den schon gelegten ihres Netzes' : ''
      }${strips.slice(0, k).some((s) => s.net !== net) ? ', und zu keinem anderen Netz' : ''}.`,
    })),
    {
      do: `Jede der ${lamps} LEDs an der Zelle probieren, ihr Plus zeichnen und sie über ihrem Umriss befestigen.`,
      test: 'Bei gedrückter Zelle leuchtet jede LED, wie ihr Zustand sagt; eine dunkle umdrehen.',
    },
    {
      do: 'Das Grundblatt aufnehmen und prüfen, bevor etwas geklebt wird.',
      test: 'Die Prüfung sagt bereit, oder bereit, sobald das Genannte von Hand geklärt ist.',
    },
    {
      do: 'Die Lichtlöcher stanzen, die Schaumpads legen, das Deckblatt lose auflegen.',
      test: 'Jede LED scheint durch ihr Loch, und der Kontakt der Zelle öffnet beim Loslassen von selbst.',
    },
    {
      do: 'Das Deckblatt ankleben und die Zelle einschließen.',
      test: 'Die Karte leuchtet wie geplant, und kein Kind erreicht die Zelle.',
    },
  ],
};
