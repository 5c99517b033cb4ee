import { stateWords as english } from './en/states.ts';
import { spoken } from './spoken.ts';

export const stateWords = spoken('states', english);

/** A state's name as it is told; the net's own name for it stays the same in every language. */
export function sayState(name: string): string {
  if (name === 'at rest') return stateWords.atRest;
  if (name === 'cell pressed') return stateWords.cellPressed;
  if (name === 'everything pressed') return stateWords.everything;
  const stroke = /^stroke (\d+)$/.exec(name)?.[1];
  if (stroke !== undefined) return stateWords.stroke(stroke);
  const contact = /^(.*) pressed$/.exec(name)?.[1];
  return contact === undefined ? name : stateWords.pressed(contact);
}
