export type { Checked, StageName, Verdict } from './types.ts';
