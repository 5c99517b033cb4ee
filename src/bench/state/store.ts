import { useSyncExternalStore } from 'react';
import { emptyBench } from './emptyBench.ts';
import type { BenchState } from './types.ts';

let state: BenchState = emptyBench();
const listeners = new Set<() => void>();

/** The whole state of the page, as it is now. */
export function bench(): BenchState {
  return state;
}

/** Takes over what is given and tells whoever shows it. */
export function change(part: Partial<BenchState>): void {
  state = { ...state, ...part };
  for (const listener of listeners) listener();
}

export function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** A part of the state, shown anew when it changes. The choice must give the same value for the same state. */
export function useBench<T>(choose: (state: BenchState) => T): T {
  return useSyncExternalStore(subscribe, () => choose(state));
}
