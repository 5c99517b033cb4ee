import { change } from './store.ts';
import type { StepName } from './types.ts';

/** Opens a step because of what came to the bench. Where the keyboard was in the page that goes, it comes along. */
export function goAlong(step: StepName): void {
  if (document.getElementById('work')?.contains(document.activeElement)) goTo(step);
  else change({ step });
}

/** Opens a step, its head in view, with the keyboard at its beginning. */
export function goTo(step: StepName): void {
  change({ step, part: undefined });
  requestAnimationFrame(() => {
    document.getElementById('work')?.focus({ preventScroll: true });
    scrollTo({ top: 0 });
  });
}
