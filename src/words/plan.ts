import { planWords as english } from './en/plan.ts';
import { spoken } from './spoken.ts';

export const planWords = spoken('plan', english);
