import { findingWords as english } from './en/findings.ts';
import { spoken } from './spoken.ts';

export const findingWords = spoken('findings', english);
