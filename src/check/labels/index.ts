export { readSheet } from './readSheet.ts';
