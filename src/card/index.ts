export * from './schema.ts';
export { cardFrom, parseCard } from './parseCard.ts';
