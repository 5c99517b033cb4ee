import { sheetWords as english } from './en/sheet.ts';
import { spoken } from './spoken.ts';

export const sheetWords = spoken('sheet', english);
