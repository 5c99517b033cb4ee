import { cardWords as english } from './en/card.ts';
import { spoken } from './spoken.ts';

export const cardWords = spoken('card', english);
