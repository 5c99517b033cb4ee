import { copperWords as english } from './en/copper.ts';
import { spoken } from './spoken.ts';

export const copperWords = spoken('copper', english);
