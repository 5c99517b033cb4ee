import { learned as english } from './en/learned.ts';
import { spoken } from './spoken.ts';

export const learned = spoken('learned', english);
