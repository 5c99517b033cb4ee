import { change } from './store.ts';
import type { StepName } from './types.ts';

/** Opens a step, its head in view, with the keyboard at its beginning. */
export function goTo(step: StepName): void {
  change({ step, part: undefined });
  requestAnimationFrame(() => {
    document.getElementById('work')?.focus({ preventScroll: true });
    scrollTo({ top: 0 });
  });
}
