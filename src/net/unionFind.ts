/** Disjoint sets over 0..n-1 (Tarjan 1975, path halving). */
export interface Sets {
  find(i: number): number;
  join(i: number, j: number): void;
}

export function disjointSets(n: number): Sets {
  const parent = Int32Array.from({ length: n }, (_, i) => i);
  const find = (i: number): number => {
    while (parent[i] !== i) {
      parent[i] = parent[parent[i]];
      i = parent[i];
    }
    return i;
  };
  return {
    find,
    join(i, j) {
      parent[find(i)] = find(j);
    },
  };
}
