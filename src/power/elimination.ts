/**
 * Solving the node equations of a passive network by star-mesh elimination: a node k with conductances g_kj to its
 * neighbours is replaced by conductances g_ki g_kj / sum(g_k) between them. It is Gaussian elimination of the
 * conductance matrix, but nothing is ever subtracted, so a pA leak beside a 1000 S strip keeps all its digits.
 * @source Rosen, "A new network theorem", J. IEE 62, 1924 (star-mesh); Grassmann, Taksar and Heyman,
 *   Operations Research 33(5), 1985 (elimination without subtraction)
 */
export interface EliminationPlan {
  /** Nodes in order of elimination, each with its neighbours left at that time. Roots are never eliminated. */
  steps: { node: number; neighbours: number[]; slots: number[]; fills: Int32Array }[];
  /** Slot of each given edge, in the order given. */
  slotOf: Int32Array;
  slots: number;
  nodes: number;
}

/**
 * Orders the elimination, the node of fewest neighbours first.
 * @param nodes number of nodes
 * @param edges pairs of nodes; several edges may join the same pair
 * @param roots one reference node (0 V) in each connected part
 */
export function planElimination(
  nodes: number,
  edges: readonly (readonly [number, number])[],
  roots: ReadonlySet<number>,
): EliminationPlan {
  const around: Map<number, number>[] = Array.from({ length: nodes }, () => new Map());
  let slots = 0;
  const slotBetween = (a: number, b: number): number => {
    const known = around[a]?.get(b);
    if (known !== undefined) return known;
    around[a]?.set(b, slots);
    around[b]?.set(a, slots);
    return slots++;
  };
  const slotOf = Int32Array.from(edges, ([a, b]) => slotBetween(a, b));
  const queue = byDegree(around, roots);
  const steps: EliminationPlan['steps'] = [];
  for (let node = queue.next(); node !== undefined; node = queue.next()) {
    const neighbours = [...(around[node]?.keys() ?? [])];
    const own = [...(around[node]?.values() ?? [])];
    for (const other of neighbours) around[other]?.delete(node);
    const fills = new Int32Array((neighbours.length * (neighbours.length - 1)) / 2);
    let k = 0;
    for (let i = 0; i < neighbours.length; i++)
      for (let j = i + 1; j < neighbours.length; j++)
        fills[k++] = slotBetween(neighbours[i] as number, neighbours[j] as number);
    for (const other of neighbours) queue.changed(other);
    steps.push({ node, neighbours, slots: own, fills });
  }
  return { steps, slotOf, slots, nodes };
}

/** Nodes in buckets by their number of neighbours; a node whose degree changed is put in again and stale entries are passed over. */
function byDegree(around: Map<number, number>[], roots: ReadonlySet<number>) {
  const buckets: number[][] = [];
  const done = around.map((_, node) => roots.has(node));
  const put = (node: number) => {
    const degree = around[node]?.size ?? 0;
    (buckets[degree] ??= []).push(node);
  };
  around.forEach((_, node) => put(node));
  let lowest = 0;
  return {
    changed(node: number) {
      if (done[node]) return;
      put(node);
      lowest = Math.min(lowest, around[node]?.size ?? 0);
    },
    next(): number | undefined {
      for (; lowest < buckets.length; lowest++) {
        const bucket = buckets[lowest];
        while (bucket?.length) {
          const node = bucket.pop() as number;
          if (done[node] || around[node]?.size !== lowest) continue;
          done[node] = true;
          return node;
        }
      }
      return undefined;
    },
  };
}

/**
 * Potentials that `inflow` amperes into each node raise.
 * @param siemens conductance of each given edge
 * @returns V at each node, 0 at the roots
 */
export function solveLinear(
  plan: EliminationPlan,
  siemens: Float64Array,
  inflow: Float64Array,
): Float64Array {
  const g = new Float64Array(plan.slots);
  for (let e = 0; e < siemens.length; e++) {
    const slot = plan.slotOf[e] as number;
    g[slot] = (g[slot] as number) + (siemens[e] as number);
  }
  const push = inflow.slice();
  const sums = plan.steps.map((step) => eliminate(step, g, push));
  const volts = new Float64Array(plan.nodes);
  for (let s = plan.steps.length - 1; s >= 0; s--) {
    const { node, neighbours, slots } = plan.steps[s] as EliminationPlan['steps'][number];
    let total = push[node] as number;
    for (let i = 0; i < neighbours.length; i++)
      total += (g[slots[i] as number] as number) * (volts[neighbours[i] as number] as number);
    const sum = sums[s] as number;
    volts[node] = sum > 0 ? total / sum : 0;
  }
  return volts;
}

function eliminate(step: EliminationPlan['steps'][number], g: Float64Array, push: Float64Array): number {
  const { node, neighbours, slots, fills } = step;
  let sum = 0;
  for (const slot of slots) sum += g[slot] as number;
  if (!(sum > 0)) return 0;
  let k = 0;
  for (let i = 0; i < neighbours.length; i++) {
    const share = (g[slots[i] as number] as number) / sum;
    const other = neighbours[i] as number;
    push[other] = (push[other] as number) + share * (push[node] as number);
    for (let j = i + 1; j < neighbours.length; j++, k++) {
      const fill = fills[k] as number;
      g[fill] = (g[fill] as number) + share * (g[slots[j] as number] as number);
    }
  }
  return sum;
}
