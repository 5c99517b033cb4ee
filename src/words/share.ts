import { shareWords as english } from './en/share.ts';
import { spoken } from './spoken.ts';

export const shareWords = spoken('share', english);
