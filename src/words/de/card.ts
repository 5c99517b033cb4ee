import type { Catalogue } from '../catalogue.ts';

export const cardWords: Catalogue['card'] = {
  notJson: (name) =>
    `${name} ist keine Kartendatei: Es ist kein JSON. Im Texteditor öffnen oder die Karte neu speichern.`,
  unknownKeys: (name, keys, where) =>
    `${name} hat einen Schlüssel, den keine Karte kennt: ${keys}${where}. Entfernen oder die Schreibweise berichtigen.`,
  wrong: (name, where, why) => `${name} ist falsch bei ${where}: ${why}. Berichtigen und neu versuchen.`,
  wrongWhole: (name, why) => `${name} ist keine Kartendatei: ${why}.`,
  within: (where) => ` (in ${where})`,
  more: (count) =>
    count === 1 ? ' Eine weitere solche Stelle folgt.' : ` ${count} weitere solche Stellen folgen.`,
  notBase64: 'kein Base64-Text',
  twice: (name, what, id) => `${name} nennt zweimal ${what} ${id}. Jedem einen eigenen Namen geben.`,
  offBase: (name, what, at, base) =>
    `${name}: ${what} bei ${at} liegt außerhalb des Grundblatts (${base} mm). Versetzen oder die Größe des Grundblatts angeben.`,
};
