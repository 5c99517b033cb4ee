import type { Catalogue } from '../catalogue.ts';
import { pointed } from '../numbers.ts';

export const powerWords: Catalogue['power'] = {
  twice: (id) => `Zwei Teile der Schaltung heißen ${id}. Jedem einen eigenen Namen geben.`,
  badOhm: (id, ohm) =>
    `${id} hat einen Widerstand von ${pointed(String(ohm))} Ohm, den es nicht gibt. 0 oder mehr angeben.`,
  badVolt: (id, volt) =>
    `Die Zelle ${id} hat ${pointed(String(volt))} V. Eine Spannung von 0 bis 100 V angeben.`,
  badCellOhm: (id, ohm) =>
    `Die Zelle ${id} hat einen Innenwiderstand von ${pointed(String(ohm))} Ohm, ein Kurzschluss hätte dann keine Lösung. 0,001 Ohm oder mehr angeben.`,
  badLamp: (id) => `Die Kennlinie von LED ${id} ist unmöglich. Spannung und Strom neu angeben.`,
  noConvergence: (steps, part) =>
    `Die Ströme kamen in ${steps} Schritten nicht zur Ruhe; nicht ins Gleichgewicht kommt ${part}. Die Werte prüfen.`,

  afloat: (state, lamps) =>
    `${state}: Das Kupfer unter ${lamps} erreicht keine Seite der Zelle, also fließt dort nichts.`,
  cellShorted: (state) =>
    `${state}: Beide Seiten der Zelle liegen auf einem Stück Kupfer. Sie wird heiß: sofort herausnehmen.`,
  lampOnOneNode: (state, lamp) =>
    `${state}: Beide Füße von ${lamp} liegen auf einem Stück Kupfer, also bleibt keine Spannung dafür.`,

  noCell: 'Noch ist keine Zelle gesetzt, also leuchtet nichts. Setzen, um Ströme zu sehen.',
  cell: (kind, percent, volt, ohm) => `${kind} mit ${percent} % Ladung: ${volt} V hinter ${ohm} Ohm.`,
  nothingLit: 'In keinem Zustand leuchtet eine LED.',
  load: {
    none: () => '',
    within: (state, mA, kind) =>
      `Höchstens ${mA} mA werden gezogen (${state}): Das gibt eine ${kind} stundenlang.`,
    'over-continuous': (state, mA, kind, continuous, pulse) =>
      `Höchstens ${mA} mA werden gezogen (${state}). Eine ${kind} ist für ${continuous} mA auf Dauer und ${pulse} mA in kurzen Stößen gemacht: gut zum Drücken, nicht zum Dauerleuchten.`,
    'over-pulse': (state, mA, kind, continuous, pulse) =>
      `Höchstens ${mA} mA werden gezogen (${state}), mehr als die ${pulse} mA, die eine ${kind} in kurzen Stößen gibt (${continuous} mA auf Dauer). Sie bricht in Sekunden ein und ist bald leer.`,
    shorted: (state, mA) =>
      `${state}: Die Zelle ist kurzgeschlossen und gibt sofort ${mA} mA. Sie wird heiß und ist hin: herausnehmen.`,
  },
  even: (state, ratio) =>
    `Die LEDs sind gleichmäßig (${state}): Die hellste hat das ${ratio}-Fache des Stroms der schwächsten.`,
  uneven: (state, brightest, dimmest, ratio) =>
    `${state}: ${brightest} hat das ${ratio}-Fache des Stroms von ${dimmest}.`,
  robbed: (state, robbers, robbed, volt) =>
    `${state}: ${robbers} nehmen ${robbed} den Strom. LEDs der roten Familie leuchten bei etwa 2 V und halten die Zelle auf ${volt} V; Weiß, Blau und echtes Grün brauchen etwa 2,8 V und bleiben dunkel.`,
  robbedByOne: (state, robber, robbed, volt) =>
    `${state}: ${robber} nimmt ${robbed} den Strom. Eine LED der roten Familie leuchtet bei etwa 2 V und hält die Zelle auf ${volt} V; Weiß, Blau und echtes Grün brauchen etwa 2,8 V und bleiben dunkel.`,
  runTime: (state, lit, bright, presses) =>
    `Gedrückt gehalten (${state}), leuchtet es an einer frischen Zelle etwa ${lit}, davon hell etwa ${bright}; das sind rund ${presses} Mal fünf Sekunden. Eine Schätzung: Zellen weichen um die Hälfte ab.`,
  hours: (hours) => `${hours} Stunden`,
  endures: 'Was an einer frischen Zelle leuchtet, leuchtet, bis sie leer ist.',
  fadesAt: (percent, lamps) => `Bei ${percent} % Restladung bleibt dunkel: ${lamps}.`,
  spread: (lamp, low, high) =>
    `Streuung von LEDs und Verbindungen: ${lamp} bekommt in neun von zehn Karten zwischen ${low} und ${high} mA.`,
  darkShare: (lamp, percent) => `In ${percent} % solcher Karten bleibt ${lamp} dunkel.`,

  bandColours: {
    black: 'schwarz',
    brown: 'braun',
    red: 'rot',
    orange: 'orange',
    yellow: 'gelb',
    green: 'grün',
    blue: 'blau',
    violet: 'violett',
    grey: 'grau',
    white: 'weiß',
    gold: 'gold',
  },
  advice: {
    resistor: (lamps, ohm, bands, ratio, mA) =>
      `${ohm} Ohm (${bands}) mit ${lamps} in Reihe legen: Dann liegen die LEDs höchstens um den Faktor ${ratio} auseinander, bei etwa ${mA} mA.`,
    'split-colours': (low, high) => `Oder die Farben trennen: ${low} an eine Zelle, ${high} an eine andere.`,
    'fewer-lamps': (state, now, most) =>
      `${now} LEDs zugleich (${state}) sind viel für eine Zelle: ${most} blieben hell in dem, was sie gibt. Nacheinander leuchten lassen oder weniger nehmen.`,
    'second-cell': (mANow, mAThen) =>
      `Eine zweite neue Zelle gleicher Art daneben (Plus an Plus) hebt die schwächste LED von ${mANow} auf ${mAThen} mA.`,
    'limit-current': (lamps, mA, ohm, bands, mAThen) =>
      `${lamps}: je ${mA} mA sind zu viel. Mit jeder ${ohm} Ohm (${bands}) in Reihe legen: ${mAThen} mA sind hell und schonen die Zelle.`,
    'which-green': (lamps) =>
      `Für ${lamps} ist Grün als echtes Grün gerechnet (etwa 3 V). Gelbliches Grün ist eine 2-V-LED: dann Gelbgrün wählen.`,
    'cell-too-low': (volt, lamps) =>
      `Eine Zelle von ${volt} V kann ${lamps} nicht zum Leuchten bringen. Eine 3-V-Lithiumzelle nehmen.`,
  },

  jointNames: {
    seam: (place) => `Überlappung bei ${place}`,
    contact: (id) => `Kontakt ${id}`,
    'lamp-leg': (id) => `Füße von ${id}`,
    legs: (ids) => `Füße von ${ids}, je für die eigene LED`,
    'cell-face': (face) => `Seite ${face} der Zelle`,
  },
  jointNeed: (joint, dims, dimOhm, darkOhm) =>
    `${joint}: ab ${dimOhm} Ohm wird schwach: ${dims}; dunkel ab ${darkOhm} Ohm.`,
  jointsFirst: 'Zuerst anzudrücken, das Empfindlichste voran:',

  tapeLesson: (length, width, ohm, splitOhm, percent) =>
    `Warum die Breite des Bands nicht zählt: Alles Band dieser Karte hintereinander (${length}, ${width} breit) hat ${ohm} Ohm. Längs geteilt sind es ${splitOhm} Ohm, und keine LED ändert sich um mehr als ${percent} %.`,
  contactLesson:
    'Warum Verbindungen zählen: Folie fest auf Folie ist ein Zehntel Ohm, Folie lose auf Folie 1 bis 10 Ohm, Folie auf gewöhnlichem Kleber gar kein Kontakt. Eine schlechte Verbindung überwiegt alles Band um ein Vielfaches.',
  more: (count) => `${count} weitere`,
  and: (names) =>
    names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} und ${names.at(-1) ?? ''}`,
};
