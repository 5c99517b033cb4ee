import { cautionWords as english } from './en/cautions.ts';
import { spoken } from './spoken.ts';

export const cautionWords = spoken('cautions', english);
