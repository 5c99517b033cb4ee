export { comparePlan } from './comparePlan.ts';
export type { PlanComparison, Standing, StripStanding } from './types.ts';
