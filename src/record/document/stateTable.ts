import type { PowerReport, StatePower } from '../../power/index.ts';
import { decimal } from '../../words/numbers.ts';
import { recordWords as words } from '../../words/record.ts';
import { sayState } from '../../words/states.ts';
import type { Block } from './types.ts';

/** Lamps down, states across would not fit a page with many lamps: states go down, lamps across, in groups of eight. */
export function stateTable(power: PowerReport): Block[] {
  const lamps = Object.keys(power.states[0]?.lamps ?? {});
  if (power.states.length === 0) return [];
  const groups = lamps.length === 0 ? [[]] : chunk(lamps, 8);
  return [
    { kind: 'heading', level: 2, text: words.sections.states },
    ...groups.map((group) => groupTable(power.states, group)),
  ];
}

function groupTable(states: StatePower[], lamps: string[]): Block {
  return {
    kind: 'table',
    caption: words.states.caption,
    head: [words.states.state, ...lamps, words.states.cell],
    numeric: [false, ...lamps.map(() => true), true],
    rows: states.map((state) => [
      sayState(state.name),
      ...lamps.map((id) => lampCell(state, id)),
      cellCell(state),
    ]),
  };
}

function lampCell(state: StatePower, id: string): string {
  const lamp = state.lamps[id];
  if (!lamp) return '';
  const mA = lamp.mA < 0.01 ? '' : `${decimal(lamp.mA, lamp.mA < 1 ? 2 : 1)} `;
  return mA + words.states.looks[lamp.look];
}

function cellCell(state: StatePower): string {
  return state.load === 'shorted' ? words.states.shorted : decimal(state.cellMA, 1);
}

function chunk<T>(items: T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, i) =>
    items.slice(i * size, (i + 1) * size),
  );
}
