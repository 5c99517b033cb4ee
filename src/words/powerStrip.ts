import { powerStripWords as english } from './en/powerStrip.ts';
import { spoken } from './spoken.ts';

export const powerStripWords = spoken('powerStrip', english);
