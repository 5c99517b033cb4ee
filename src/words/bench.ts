import { benchWords as english } from './en/bench.ts';
import { spoken } from './spoken.ts';

export const benchWords = spoken('bench', english);
