import type { Catalogue } from '../catalogue.ts';

export const foldWords: Catalogue['fold'] = {
  unknownSheet: (photo, sheet) =>
    `${photo} soll ${sheet} zeigen, aber die Karte hat keine Klappe dieses Namens. Die Klappe anlegen oder das Grundblatt nennen.`,
  noBasePhoto: 'Die Karte nennt kein Foto ihres Grundblatts: eines angeben, dessen Blatt „base“ ist.',
  pictureGone: (photo) => `Das Foto ${photo}, das die Karte nennt, ist nicht da.`,
  offRegister: {
    say: (photo, mm, by) =>
      `${photo} liegt nicht gut auf dem Grundblatt: Was beide zeigen, liegt ${mm} auseinander (gelegt nach: ${by}).`,
    by: { corners: 'Ecken', fold: 'Falz', copper: 'gleiches Kupfer' },
    do: 'Seine vier Ecken, seine Größe und den Falz prüfen oder flach gedrückt neu aufnehmen.',
    settle: (within) =>
      `Ist es dieselbe Karte, mit den Ecken in der richtigen Reihenfolge? Dann liegt, was beide zeigen, auf ${within} beisammen.`,
  },
  inParts: {
    heading: 'Isolierstücke und Klappen',
    none: 'Noch keine. Ein Isolierstück trennt zwei Streifen, die sich kreuzen; eine Klappe schließt Kontakte oder drückt auf die Zelle.',
    edit: 'Im Schritt Plan zeichnen und ändern',
  },
  sheets: {
    heading: 'Weitere Blätter dieser Karte',
    which: 'Das Foto zeigt',
    flap: (id) => `Klappe ${id}, aufgeklappt`,
    before: (id) => `das Grundblatt vor Isolierstück ${id}`,
    add: 'Sein Foto hinzufügen',
    remove: (name) => `${name} entfernen`,
    laid: (by, mm) => `Gelegt nach: ${by}, ${mm} daneben.`,
    spread: (flap) => `die Innenseite des gefalzten Grundblatts mit Klappe ${flap}`,
    place: (name) => `Ecken und Falzlinie von ${name}`,
    placeLabel: (name) => `${name} mit den Ecken des Blatts und seiner Falzlinie`,
    placeFold:
      'Zieh die vier Ecken auf die des Blatts und die beiden blauen Griffe auf seinen Falz, oder gib dessen Enden in Zahlen an: mm von der linken oberen Ecke des Blatts aus.',
    placeCorners: 'Zieh die vier Ecken auf die des Blatts und gib seine Größe an.',
    foldEnds: ['Erstes Ende des Falzes', 'Zweites Ende des Falzes'],
    foldAsDrawn: 'Falzlinie wie im Plan gezeichnet',
    notLaid: 'Liegt auf dem Grundblatt, sobald dieses fotografiert ist.',
    done: 'Fertig',
  },
  closing: {
    foam: {
      heading: 'Schaumpads',
      cell: (x, y) => `Zwei Lagen um die Knopfzelle (${x}; ${y}), an drei ihrer Seiten.`,
      strokeEnd: (x, y) =>
        `Ein Stück hinter dem Ende der Streichreihe (${x}; ${y}), damit die Klappe wieder abfedert.`,
      rest: 'Sonst eine Lage, abseits jeder Leiterbahn, die berühren muss.',
    },
    heading: 'Die Klappen schließen',
    lead: 'Die Klappe liegt über dem Grundblatt, als wären beide aus Glas.',
    flap: 'Klappe',
    slider: (id) => `Wie weit Klappe ${id} geschlossen ist`,
    at: (degrees) => `${degrees} Grad`,
    picture: (id) => `Klappe ${id} über dem Grundblatt: zum Schließen über ihren Falz ziehen`,
    meets: (contact, much) => `${contact}: ${much} Überdeckung auf der schwächsten Seite.`,
    misses: (contact, mm, direction) => `${contact}: verfehlt das Gegenstück um ${mm}, landet ${direction}.`,
    none: (contact) => `${contact}: Kein Kupfer der Klappe landet dort.`,
    tolerance: (percent, off) =>
      `Hält in ${percent} von 100 Faltungen, die um bis zu ${off} und 1 Grad abweichen.`,
    sides: { left: 'links', right: 'rechts', above: 'oberhalb', below: 'unterhalb' },
  },
  foldSide: {
    say: (flap) =>
      `Klappe ${flap} hängt an der falschen Seite: Mit dem Falz an der anderen Kante träfe ihr Kupfer die Kontakte.`,
    do: 'Die Klappe an die andere Kante hängen oder den Falz in der Karte berichtigen. Alles Übrige ist so geprüft.',
    settle: 'Die Klappe schließen: Jede ihrer Leiterbahnen muss auf ihrem Gegenstück landen.',
  },
};
