import type { Card } from '../../card/index.ts';
import type { BenchState } from './types.ts';

/** A card before anything is said about it: A6, upright (ISO 216). */
export function emptyCard(): Card {
  return {
    format: 'foilproof/1',
    base: { width_mm: 105, height_mm: 148, margin_mm: 0 },
    photos: [],
    lamps: [],
    contacts: [],
    flaps: [],
    patches: [],
    joins: [],
    touch_up: [],
    teach: { copper: [], paper: [] },
    checked: [],
    limits: { clearance_mm: 1, edge_mm: 1.5, neck_ratio: 1 / 3 },
  };
}

export function emptyBench(): BenchState {
  return {
    step: 'shoot',
    language: 'en',
    cardId: crypto.randomUUID(),
    card: emptyCard(),
    past: [],
    future: [],
    classroom: [],
    classBusy: false,
    engine: { share: 0, ready: false },
  };
}
