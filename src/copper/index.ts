export type { CopperMask } from './types.ts';
export type { LearnedMap, SeeOptions } from './seeCopper.ts';
export { seeCopper } from './seeCopper.ts';
export { applyTouchUp, paintStroke, repaint, strokeBox } from './touchUp.ts';
export { components, type Components } from './components.ts';
export { rootOf } from './lab.ts';
