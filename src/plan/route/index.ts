export { crossingsOf, suggestRoute } from './suggestRoute.ts';
export type { Crossing, Routed, Rule } from './types.ts';
