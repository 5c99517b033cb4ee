import type { Catalogue } from '../catalogue.ts';

export const cliWords: Catalogue['cli'] = {
  help: `foilproof: eine Kupferbandschaltung am Foto prüfen, bevor sie verklebt wird

  foilproof check FOTO... [--card KARTE.json] [--json] [--mask DATEI.png]
                          [--report DATEI.html|.pdf|.svg] [--squared DATEI.png]
                          [--again ZWEITE_AUFNAHME] [--labels] [--summary] [--journal DATEI] [--paper a4|letter]
  foilproof check --card KARTE.json     die Fotos mehrerer Blätter, die die Karte nennt, zusammen
  foilproof compare --built A.png --plan B.png [--px-per-mm N] [--json]
  foilproof power KARTE.json [--json]
  foilproof plan KARTE.json --print DATEI.pdf [--paper a4|letter]

Jeder Befehl kennt --language en|de|fr und --units mm|inch.
FOTO kann ein Ordner sein. Rückgabewert: 0 bereit, 1 Befunde, die aufhalten, 2 nicht zu prüfen.`,
  unknownCommand: (name) =>
    `Einen Befehl ${name} gibt es nicht. Die Befehle sind check, compare, power und plan; foilproof --help zeigt sie.`,
  unknownLanguage: (given, known) => `--language erwartet ${known}, nicht „${given}“.`,
  unknownUnit: (given, known) => `--units erwartet ${known}, nicht „${given}“.`,
  unknownOption: (command, option) =>
    `foilproof ${command} kennt ${option} nicht; foilproof --help zeigt, was erlaubt ist.`,
  optionNeedsValue: (option) => `Nach der Option ${option} muss ein Dateiname stehen.`,
  againNeedsOne: '--again erwartet eine zweite Aufnahme eines Blatts: dazu genau ein Foto angeben.',
  noPhoto: 'foilproof check braucht ein Foto, mehrere oder einen Ordner davon.',
  noCard: (command) => `foilproof ${command} braucht eine Kartendatei.`,
  noFile: (path) => `Eine Datei ${path} gibt es nicht.`,
  emptyFolder: (path) => `Der Ordner ${path} enthält kein Foto (JPEG, PNG oder WebP).`,
  noPlanPower: 'Die Karte hat keinen Plan: Jede LED gilt als unmittelbar aus der Zelle gespeist.',
  badPaper: (name) => `--paper nimmt a4 oder letter, nicht „${name}“.`,
  noPrint: 'foilproof plan braucht --print und den Namen der PDF-Datei, die zu schreiben ist.',
  badReport: (path) => `Ein Protokoll wird als .html, .pdf oder .svg geschrieben, nicht als ${path}.`,
  notPng: (option, path) => `${option} schreibt eine PNG-Datei, nicht ${path}.`,
  cannotWrite: (path) => `Die Datei ${path} lässt sich hier nicht schreiben.`,
  noPlan: (path) => `${path} hat keinen Plan zu drucken: keine Leiterbahnen unter „plan“.`,
  outlineUnsure: (photo, certainty) =>
    `Das Grundblatt war in ${photo} nicht sicher zu erkennen (Sicherheit ${certainty}). Seine vier Ecken als corners_px in der Karte angeben oder das ganze Blatt auf einem schlichten Tisch aufnehmen.`,
  unreadable: (photo, why) => `Das Kupfer in ${photo} ist nicht zu lesen: ${why}`,
  unexpected: (photo, message) => `${photo} konnte nicht geprüft werden: ${message}`,
  verdict: { clear: 'Bereit zum Kleben', 'clear-once-checked': 'Bereit nach Prüfung', hold: 'Halt' },
  couldNot: 'Konnte nicht geprüft werden',
  count: (holds, checks, notes) =>
    [
      holds > 0 ? `${holds} ${holds === 1 ? 'hält' : 'halten'} auf` : '',
      checks > 0 ? `${checks} von Hand zu prüfen` : '',
      notes > 0 ? `${notes} gut zu wissen` : '',
    ]
      .filter(Boolean)
      .join(', '),
  labels: (count) =>
    count === 0
      ? 'Vom Blatt wurde keine Beschriftung gelesen.'
      : count === 1
        ? '1 Beschriftung vom Blatt gelesen:'
        : `${count} Beschriftungen vom Blatt gelesen:`,
  sure: (certainty) => `Sicherheit ${certainty}`,
  notSeen: 'Ein Foto kann nicht zeigen:',
  checking: (done, total) => `${done} von ${total} geprüft`,
  stage: {
    decode: 'Foto wird gelesen',
    square: 'wird entzerrt',
    copper: 'Kupfer wird gesucht',
    trace: 'Leiterbahnen werden verfolgt',
    net: 'Netze werden gebildet',
    power: 'Ströme werden berechnet',
  },
};
