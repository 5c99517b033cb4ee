export type { CopperMask } from './types.ts';
export type { LearnedMap, SeeOptions } from './seeCopper.ts';
export { seeCopper } from './seeCopper.ts';
export { components, type Components } from './components.ts';
