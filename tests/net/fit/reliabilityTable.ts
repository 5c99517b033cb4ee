import type { Example } from './examples.ts';

const edges = [0, 0.1, 0.3, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1.0001];

/**
 * How often findings said at a certainty were right: per bin, and the mean gap between the two, weighed by how many there
 * are (expected calibration error). Each finding counts by its weight, so that both modes of one photograph are one.
 */
export function reliabilityTable(
  examples: readonly Example[],
  certaintyOf: (each: Example) => number,
): string {
  const all = examples.map((each) => ({ ...each, said: certaintyOf(each) }));
  const sum = (of: typeof all, value: (each: (typeof all)[number]) => number) =>
    of.reduce((total, each) => total + each.weight * value(each), 0);
  let gap = 0;
  const lines = edges.slice(1).flatMap((to, n) => {
    const bin = all.filter(({ said }) => said >= edges[n] && said < to);
    if (bin.length === 0) return [];
    const weight = sum(bin, () => 1);
    const said = sum(bin, (each) => each.said) / weight;
    const right = sum(bin, (each) => Number(each.right)) / weight;
    gap += Math.abs(said - right) * weight;
    const range = `${edges[n].toFixed(2)}-${Math.min(1, to).toFixed(2)}`;
    return [`  ${range}  said ${said.toFixed(2)}  right ${right.toFixed(2)}  (${bin.length})`];
  });
  const loss = sum(all, ({ said, right }) => (said - Number(right)) ** 2) / sum(all, () => 1);
  const mean = gap / sum(all, () => 1);
  return [...lines, `  mean gap ${mean.toFixed(3)}, Brier ${loss.toFixed(3)}`].join('\n');
}
