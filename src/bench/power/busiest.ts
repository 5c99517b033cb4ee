import type { PowerReport } from '../../power/index.ts';

/** The state that draws the most from the cell: the one worth looking at first. */
export function busiest({ states }: PowerReport): string | undefined {
  return [...states].sort((a, b) => b.cellMA - a.cellMA)[0]?.name;
}
