export type { CopperMask, LearnedMap, Trouble } from './types.ts';
export type { SeeOptions } from './seeCopper.ts';
export { closeGlints } from './closeGlints.ts';
export { openPaper } from './openPaper.ts';
export { seeCopper } from './seeCopper.ts';
export { applyTouchUp, paintStroke, repaint, strokeBox } from './touchUp.ts';
export { components, type Components } from './components.ts';
export { rootOf } from './lab.ts';
export { fuseShots, type FusedShots } from './shots/fuseShots.ts';
