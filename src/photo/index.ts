export type { Photo } from './types.ts';
