export type { CopperMask } from './types.ts';
