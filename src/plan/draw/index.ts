export {
  artworkEdges,
  artworkMatrix,
  baseSize,
  fitArtwork,
  layArtwork,
  pullArtwork,
  scaleArtwork,
  shiftArtwork,
} from './artwork.ts';
export type { ArtworkCorners } from './artwork.ts';
export { checkFront, holesIn } from './checkFront.ts';
export type { FrontMiss, SeenHole } from './checkFront.ts';
export { frontOf } from './frontOf.ts';
export type { FrontCheck } from './frontOf.ts';
export { paintPlan } from './paintPlan.ts';
export { flapAlong } from './flapAlong.ts';
export { netAt } from './netAt.ts';
export { openCrossings, patchOver, planChecks } from './planChecks.ts';
export type { OpenCrossing, PlanChecks } from './planChecks.ts';
export { planFromSketch } from './planFromSketch.ts';
export { planFromTraced } from './planFromTraced.ts';
export { snap, snapAngle, snapCorner } from './snap.ts';
export type { Snapped } from './snap.ts';
