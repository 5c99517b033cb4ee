export { sayTally } from './classroom/sayTally.ts';
export { tally, type Outcome, type Tally } from './classroom/tally.ts';
export { checkJson, type CheckJson } from './checkJson.ts';
export { pdfRecord, type PdfOptions } from './pdfRecord.ts';
export type { Paper, RecordFonts } from './pdf/types.ts';
export { svgRecord } from './svgRecord.ts';
export { htmlRecord } from './htmlRecord.ts';
export type { EncodedImage } from './drawing/types.ts';
export type { Recordable, RecordImages } from './types.ts';
