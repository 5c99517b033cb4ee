export * from './compare/index.ts';
