export { FoilproofError } from './error.ts';
