import { labelWords as english } from './en/labels.ts';
import { spoken } from './spoken.ts';

export const labelWords = spoken('labels', english);
