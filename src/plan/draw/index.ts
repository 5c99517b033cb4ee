export { checkFront, holesIn } from './checkFront.ts';
export type { FrontMiss, SeenHole } from './checkFront.ts';
export { paintPlan } from './paintPlan.ts';
export { openCrossings, planChecks } from './planChecks.ts';
export type { OpenCrossing, PlanChecks } from './planChecks.ts';
export { planFromTraced } from './planFromTraced.ts';
export { snap, snapAngle } from './snap.ts';
export type { Snapped } from './snap.ts';
