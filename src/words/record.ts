import { recordWords as english } from './en/record.ts';
import { spoken } from './spoken.ts';

export const recordWords = spoken('record', english);
