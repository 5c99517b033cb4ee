import type { Finding } from './types.ts';

export type Verdict = 'clear' | 'clear-once-checked' | 'hold';

/** Hold while a sure fault is open; clear once checked while anything asks for a hand; else clear. */
export function verdictOf(findings: readonly Finding[]): Verdict {
  const open = findings.filter(({ checked }) => !checked);
  if (open.some(holds)) return 'hold';
  if (open.some(({ weight }) => weight !== 'note')) return 'clear-once-checked';
  return 'clear';
}

/** Whether a finding keeps the card from being glued. Under 0.5 it only says "look here". */
export function holds({
  weight,
  certainty,
  checked,
}: Pick<Finding, 'weight' | 'certainty'> & { checked?: unknown }): boolean {
  return weight === 'holds' && certainty >= 0.5 && !checked;
}
