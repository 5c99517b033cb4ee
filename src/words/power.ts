import { powerWords as english } from './en/power.ts';
import { spoken } from './spoken.ts';

export const powerWords = spoken('power', english);
