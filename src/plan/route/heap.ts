/** A least-first queue of grid nodes: a binary heap on flat arrays. @source Williams, "Algorithm 232", CACM 7 (1964) */
export class NodeQueue {
  private keys: number[] = [];
  private nodes: number[] = [];

  get size(): number {
    return this.nodes.length;
  }

  push(key: number, node: number): void {
    let k = this.nodes.length;
    this.keys.push(key);
    this.nodes.push(node);
    while (k > 0) {
      const up = (k - 1) >> 1;
      if (this.keys[up] <= key) break;
      this.keys[k] = this.keys[up];
      this.nodes[k] = this.nodes[up];
      k = up;
    }
    this.keys[k] = key;
    this.nodes[k] = node;
  }

  /** Node of the least key; undefined when empty. */
  pop(): number | undefined {
    if (!this.nodes.length) return undefined;
    const top = this.nodes[0];
    const key = this.keys.pop()!;
    const node = this.nodes.pop()!;
    const n = this.nodes.length;
    if (!n) return top;
    let k = 0;
    for (let low = 1; low < n; low = 2 * k + 1) {
      if (low + 1 < n && this.keys[low + 1] < this.keys[low]) low++;
      if (this.keys[low] >= key) break;
      this.keys[k] = this.keys[low];
      this.nodes[k] = this.nodes[low];
      k = low;
    }
    this.keys[k] = key;
    this.nodes[k] = node;
    return top;
  }
}
