export * from './built/index.ts';
export * from './compare/index.ts';
