export { scaleTold } from './scaleTold.ts';
export type { Scale, ScaleTold } from './scaleTold.ts';
