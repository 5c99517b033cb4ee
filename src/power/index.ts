export { cellAt, cellTable } from './cellTable.ts';
export { circuitOf } from './circuitOf.ts';
export { colourBands, nextUp } from './resistorSeries.ts';
export { familyOf } from './lampTable.ts';
export { solve } from './solve.ts';
export { solveStates, type PowerOptions } from './solveStates.ts';
export { sayPower, type PowerWords } from './sayPower.ts';
export type * from './types.ts';
