export type { Outline, SquaredSheet } from './types.ts';
