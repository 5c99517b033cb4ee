import type { Catalogue } from '../catalogue.ts';
import { decimal } from '../numbers.ts';

export const powerStripWords: Catalogue['powerStrip'] = {
  heading: 'Leuchtet es, wie gleichmäßig, wie lange',
  noLamps: 'LEDs und Zelle setzen, dann werden hier die Ströme berechnet.',
  state: 'Zustand',
  cellAge: 'Restladung der Zelle',
  charge: (percent) => `${percent} %`,
  fresh: 'frisch',
  spent: 'fast leer',
  strip: (state) => `LEDs im Zustand „${state}“, so hell gezeichnet, wie sie aussähen`,
  lamp: (id, colour, look, mA) => `${id}, ${colour}: ${look}, ${mA}`,
  looks: { lit: 'leuchtet', dim: 'schwach', dark: 'dunkel' },
  mA: (mA) => (mA >= 0.005 ? `${decimal(mA, mA < 1 ? 2 : 1)} mA` : 'kein Strom'),
  tells: 'Was zu erwarten ist',
  advice: 'Was zu ändern ist',
  joints: 'Überlappungen und Kontakte, die zuerst anzudrücken sind',
  lesson: 'Warum Kontakte zählen und das Band nicht',
  working: 'Wird berechnet …',
};
