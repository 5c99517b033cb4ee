import { photoWords as english } from './en/photo.ts';
import { spoken } from './spoken.ts';

export const photoWords = spoken('photo', english);
