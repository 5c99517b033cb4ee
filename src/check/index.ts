export { asPlanned } from './asPlanned.ts';
export type { AsPlanned } from './asPlanned.ts';
export { brush, unbrush } from './brush.ts';
export { check } from './check.ts';
export type { CheckOptions } from './options.ts';
export { renewFrom } from './renew.ts';
export type { Work } from './renew.ts';
export type { ShotFate } from './shots.ts';
export type { Checked, StageName, Verdict } from './types.ts';
