export { sheetFindings } from './findings.ts';
export { joinSheets } from './join.ts';
export { netsOfSheets } from './netsOfSheets.ts';
export { placeSheet } from './place.ts';
export type { JoinedSheets, PlacedSheet, ReadSheet, SheetFate, SheetPhoto } from './types.ts';
export { cardWithSheets, tracedWithSheets } from './withSheets.ts';
