import { foldWords as english } from './en/fold.ts';
import { spoken } from './spoken.ts';

export const foldWords = spoken('fold', english);
