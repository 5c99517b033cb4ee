import type { Catalogue } from '../catalogue.ts';

const ways: Record<string, string> = {
  left: 'links',
  right: 'rechts',
  above: 'oberhalb',
  below: 'unterhalb',
  up: 'oben',
  down: 'unten',
};
const way = (direction: string) => ways[direction] ?? direction;
const pole = (side: string) => (side === '+' ? 'Plus' : side === '-' ? 'Minus' : side);

export const findingWords: Catalogue['findings'] = {
  names: {
    'shorted-cell': 'Zelle kurzgeschlossen',
    bridge: 'Brücke',
    gap: 'Unterbrechung',
    'reversed-lamp': 'LED verpolt',
    'lamp-off-strip': 'LED neben der Leiterbahn',
    'lamp-on-one-strip': 'LED auf einer einzigen Leiterbahn',
    'unfed-lamp': 'LED ohne Strom',
    'lit-at-rest': 'Leuchtet zu früh',
    'missed-contact': 'Kontakt verfehlt',
    'missing-strip': 'Leiterbahn noch zu legen',
    'extra-strip': 'Überzählige Leiterbahn',
    'shifted-strip': 'Leiterbahn versetzt',
    'shifted-lamp': 'LED versetzt',
    'off-register': 'Blatt liegt daneben',
    tight: 'Enge Stelle',
    'narrow-neck': 'Schmaler Hals',
    seam: 'Überlappung',
    'loose-end': 'Loses Ende',
    'near-edge': 'Nahe am Rand',
  },
  place: (x, y) => `${x} von links, ${y} von oben`,
  placeBy: (place, near) => `${place}, ${near}`,
  near: { lamp: (id) => `bei LED ${id}`, cell: 'bei der Zelle', contact: (id) => `bei Kontakt ${id}` },
  shortedCell: {
    rim: 'Kupfer vom Netz der oberen Seite liegt unter dem Rand der Zelle: Der Becher verbindet beide Seiten, und die Zelle wird heiß.',
    copper: 'Beide Seiten der Zelle sind durch Kupfer verbunden: Die Zelle wird heiß und ist hin.',
    do: 'Die Zelle sofort herausnehmen, das Kupfer hier zurückschneiden und vor dem Einsetzen neu prüfen.',
    settle: 'Ohne Zelle darf ein Messgerät zwischen den beiden Netzen keinen Durchgang zeigen.',
  },
  bridge: {
    say: (width, between, and) =>
      `Kupfer von ${width} Breite verbindet ${between} und ${and}, die getrennt bleiben müssen.`,
    faint: (width, between, and) =>
      `Eine blasse Linie von ${width} Breite führt vom Netz von ${between} zu dem von ${and}: Ist sie Kupfer, so verbindet sie, was getrennt bleiben muss.`,
    join: (between, and) =>
      `Was hier leiten soll, verbindet ${between} und ${and}, die getrennt bleiben müssen.`,
    closed: (flap) => ` Das geschieht, wenn Klappe ${flap} geschlossen ist.`,
    heat: ' Das schließt die Zelle kurz: Sie wird heiß und ist hin.',
    do: 'Das Kupfer hier durchschneiden oder abheben und die Ränder glatt streichen.',
    look: 'Mit der Lupe hinsehen oder ein zweites Foto machen. Ist es Kupfer, durchschneiden; ein Schatten, ein Knick oder ein Bleistiftstrich schadet nicht.',
    settle: 'Ohne Zelle darf ein Messgerät über dieser Stelle nach dem Schnitt keinen Durchgang zeigen.',
  },
  gap: {
    say: (width) => `Die Leiterbahn ist hier unterbrochen: ${width} Papier liegen quer darin.`,
    starves: (lamps) => ` Ohne sie bleibt dunkel: ${lamps}.`,
    unsure: (width) =>
      `Eine Linie von ${width} Breite kreuzt die Leiterbahn; dieses Foto kann Bruch und Glanz nicht trennen.`,
    do: 'Ein frisches Stück Band über den Bruch legen, Folie auf Folie, und andrücken.',
    look: 'Ein zweites Foto mit geneigter Lampe aufnehmen oder hier genau hinsehen.',
    settle: (lamps) =>
      lamps
        ? `Bei gedrückter Zelle mit einem Stück Folie überbrücken; dann muss leuchten: ${lamps}.`
        : 'Ein Messgerät längs der Leiterbahn muss Durchgang zeigen.',
  },
  cellReversed: {
    say: (lamps) =>
      `Alle LEDs sind gegen die Zelle gepolt (${lamps}): Die Zelle liegt verkehrt herum, nicht die LEDs.`,
    do: 'Die Zelle umdrehen oder angeben, welche Seite oben liegt.',
    settle: 'Mit umgedrehter Zelle müssen alle leuchten.',
  },
  reversedLamp: {
    say: (lamp) => `${lamp} ist verpolt: Ihr Plusfuß liegt auf der Minusseite.`,
    do: (lamp) => `${lamp} um eine halbe Drehung wenden, sodass Plus auf der Plusbahn liegt.`,
    settle: (lamp) => `Eine Zelle an die beiden Leiterbahnen halten, Plus an Plus: ${lamp} muss leuchten.`,
  },
  lampOffStrip: {
    say: (lamp, pad, off) => `Der ${pole(pad)}fuß von ${lamp} verfehlt seine Leiterbahn${off}.`,
    both: (lamp) => `Kein Fuß von ${lamp} trifft Kupfer.`,
    by: (mm) => ` um ${mm}`,
    do: (lamp) => `${lamp} auf das Kupfer rücken oder ein Stück Band von der Leiterbahn zum Fuß legen.`,
    settle: (lamp) => `Bei eingelegter Zelle den Fuß andrücken: ${lamp} muss leuchten.`,
  },
  lampOnOneStrip: {
    say: (lamp) => `Beide Füße von ${lamp} liegen auf einem Netz: Das Kupfer läuft darunter durch.`,
    do: (lamp) => `Die Leiterbahn unter ${lamp} durchschneiden, sodass jeder Fuß seine Seite hat.`,
    settle: 'Ein Messgerät zwischen den beiden Füßen darf keinen Durchgang zeigen.',
  },
  unfedLamp: {
    say: (lamp, side) =>
      side === 'both'
        ? `In keinem Zustand leuchtet ${lamp}: Kein Weg führt von der Zelle hindurch und zurück.`
        : `In keinem Zustand leuchtet ${lamp}: Ihre ${pole(side)}seite trifft nie die ${pole(side)}seite der Zelle.`,
    do: (side) =>
      side === 'both'
        ? 'Ihre Leiterbahnen von beiden Füßen zur Zelle verfolgen und suchen, wo sie enden.'
        : `Die Leiterbahn vom ${pole(side)}fuß zur Zelle verfolgen und suchen, wo sie endet.`,
    settle: (lamp) =>
      `Eine Zelle an beide Füße der LED halten: Leuchtet ${lamp}, liegt es an einer Leiterbahn, nicht an der LED.`,
  },
  litAtRest: {
    say: (lamp, state) => `${lamp} leuchtet schon im Zustand „${state}“, bevor der eigene Kontakt schließt.`,
    do: 'Das Kupfer suchen, das am Kontakt vorbeiführt, und durchschneiden.',
    settle: 'In diesem Zustand muss sie dunkel bleiben.',
  },
  wrongStep: {
    say: (lamp, state, contact) =>
      `${lamp} leuchtet im Zustand „${state}“, obwohl sie auf ${contact} wartet.`,
    do: 'Die beiden Leiterbahnen tauschen oder ändern, worauf die LED wartet.',
    settle: 'Mit eingelegter Zelle langsam streichen: Eine LED nach der anderen muss leuchten.',
  },
  outOfOrder: {
    say: (contact, order, among) =>
      `Ein Finger trifft ${contact} nicht als Nummer ${order}: ${among} liegen längs des Strichs in anderer Reihenfolge.`,
    do: 'Die Kontakte nach ihrer Lage nummerieren oder versetzen.',
    settle: 'Mit eingelegter Zelle langsam streichen: Die LEDs müssen in ihrer Reihenfolge leuchten.',
  },
  nest: {
    low: (foam, cell) =>
      `Schaumpads von ${foam} um eine Zelle von ${cell} sind zu niedrig: Die Klappe ruht auf der Zelle und schaltet in Ruhe ein.`,
    high: (foam, cell) =>
      `Schaumpads von ${foam} um eine Zelle von ${cell} sind so hoch, dass Drücken die Klappe vielleicht nicht hinabbringt.`,
    raise: 'Eine weitere Lage Schaumpads auf drei Seiten der Zelle legen.',
    lower: 'Eine Lage Schaumpads wegnehmen.',
    settle: 'Die Klappe mit eingelegter Zelle schließen: dunkel in Ruhe, hell beim Drücken.',
  },
  patch: {
    say: (patch, mm, limit) =>
      `Isolierstück ${patch} deckt die Kreuzung nur um ${mm} (ringsum mindestens ${limit}).`,
    do: 'Ein größeres Isolierstück nehmen oder das Kupfer darauf stutzen.',
    settle:
      'Ohne Zelle darf ein Messgerät zwischen beiden Leiterbahnen keinen Durchgang zeigen, auch gebogen nicht.',
  },
  missedContact: {
    flap: (contact, mm, direction) =>
      `Bei ${contact} landet das Kupfer der Klappe ${mm} ${way(direction)} von seinem Gegenstück.`,
    shift: (direction) => `Nach ${way(direction)} rücken oder eine der Leiterbahnen verbreitern.`,
    cell: 'Kein Kupfer trifft diese Seite der Zelle.',
    none: (contact) => `Kontakt ${contact} hat kein Kupfer in Reichweite.`,
    one: (contact) => `Kontakt ${contact} findet nur auf einer Seite Kupfer.`,
    do: 'Die Leiterbahn bis hierher verlängern oder den Kontakt versetzen.',
    settle: 'Mit eingelegter Zelle drücken: Seine LEDs müssen leuchten.',
  },
  missingStrip: {
    say: (strip) => `Leiterbahn ${strip} des Plans ist noch zu legen.`,
    do: 'Legen oder aus dem Plan nehmen.',
  },
  extraStrip: { say: 'Kupfer hier steht nicht im Plan.', do: 'Abnehmen oder in den Plan einzeichnen.' },
  shiftedStrip: {
    say: (strip, mm) => `Leiterbahn ${strip} liegt ${mm} neben ihrem Platz im Plan.`,
    do: 'Prüfen, ob LEDs und Kontakte sie noch treffen.',
  },
  shiftedLamp: {
    say: (lamp, mm) => `${lamp} liegt ${mm} neben dem Platz im Plan: Das Lichtloch würde sie verfehlen.`,
    do: 'Die LED versetzen oder das Loch dort stanzen, wo sie sitzt.',
  },
  tight: {
    say: (mm, limit) => `Zwei Netze kommen einander auf ${mm} nahe (Grenze ${limit}).`,
    do: 'Eine Leiterbahn zurückschneiden oder eine mit klarem Band abdecken.',
    settle: 'Die Karte mit eingelegter Zelle sacht biegen: Nichts darf flackern.',
  },
  narrowNeck: {
    say: (mm, usual) =>
      `Die Leiterbahn verengt sich hier auf ${mm} (sonst ${usual}): Sie kann reißen, wenn sich das Papier biegt.`,
    do: 'Ein zweites Stück Band über den Hals legen.',
    settle: 'Die Karte hier mit eingelegter Zelle sacht biegen: Nichts darf flackern.',
  },
  seam: {
    say: 'Eine Überlappung: Ein Foto kann nicht zeigen, ob sie leitet, denn gewöhnlicher Kleber leitet nicht.',
    glare: 'Glanz verdeckt hier die Leiterbahn: Sie gilt als ganz, doch dieses Foto kann es nicht zeigen.',
    do: 'Mit dem Falzbein andrücken, das Ende umschlagen, sodass Folie auf Folie liegt, oder durchmessen.',
    settle: 'Mit eingelegter Zelle hier drücken: Was dahinter liegt, muss leuchten und hell bleiben.',
  },
  looseEnd: {
    say: 'Eine Leiterbahn endet hier und führt zu nichts, was angegeben ist.',
    do: 'Angeben, wohin sie führt, oder so lassen.',
  },
  nearEdge: {
    say: (mm, limit) => `Kupfer liegt ${mm} vom Rand (Grenze ${limit}).`,
    do: 'Vom Schnitt fernhalten: Eine Schnittkante kann es abheben.',
  },
  lookHere: 'Hier hinsehen: Das ist nicht sicher.',
  settleByEye: 'Genau hinsehen oder neu aufnehmen.',
  notSeen: {
    joints: 'Ob der Kleber leitet, wo Band auf Band liegt oder eine LED darauf sitzt.',
    parts: 'Eine tote LED oder eine leere Zelle.',
    patches: 'Kupfer unter einem Isolierstück: Es gilt, was die Karte sagt.',
    covered: 'Kupfer unter LEDs und Zelle: Es gilt als durchlaufend, wo es eintritt.',
    upperFace: 'Ob etwas die obere Seite der Zelle trifft: Kein Platz dafür ist angegeben.',
    noCell: 'Welche LEDs leuchten: Noch ist keine Zelle angegeben.',
    contacts: 'Ob Klappe oder Finger fest genug drücken, um den Kontakt zu schließen.',
    fineGaps: (mm) => `Unterbrechungen unter ${mm}: Dieses Foto ist nicht scharf oder groß genug.`,
  },
};
