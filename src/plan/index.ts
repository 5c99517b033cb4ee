export * from './built/index.ts';
export * from './compare/index.ts';
export * from './route/index.ts';
export * from './draw/index.ts';
export * from './print/index.ts';
export { distanceToRibbon, lengthOf } from './strip/ribbon.ts';
