/**
 * A least-first queue of grid nodes whose keys never fall below the last one taken: keys a quarter of a millimetre apart
 * lie in one bucket and leave it first in, first out.
 * @source Dial, "Algorithm 360", CACM 12 (1969)
 */
export class NodeQueue {
  private heads = new Int32Array(4096).fill(-1);
  private tails = new Int32Array(4096);
  private nodes = new Int32Array(4096);
  private next = new Int32Array(4096);
  private size = 0;
  private at = 0;
  private last = -1;

  clear(): void {
    this.heads.fill(-1, 0, this.last + 1);
    this.size = 0;
    this.at = 0;
    this.last = -1;
  }

  push(key: number, node: number): void {
    const bucket = Math.max(this.at, (key * 4) | 0);
    if (bucket >= this.heads.length) {
      this.heads = grown(this.heads, 2 * bucket, -1);
      this.tails = grown(this.tails, 2 * bucket, 0);
    }
    if (this.size === this.nodes.length) {
      this.nodes = grown(this.nodes, 2 * this.size, 0);
      this.next = grown(this.next, 2 * this.size, 0);
    }
    this.nodes[this.size] = node;
    this.next[this.size] = -1;
    if (this.heads[bucket] < 0) this.heads[bucket] = this.size;
    else this.next[this.tails[bucket]] = this.size;
    this.tails[bucket] = this.size++;
    if (bucket > this.last) this.last = bucket;
  }

  /** Node of the least key; -1 when empty. */
  pop(): number {
    while (this.at <= this.last && this.heads[this.at] < 0) this.at++;
    if (this.at > this.last) return -1;
    const entry = this.heads[this.at];
    this.heads[this.at] = this.next[entry];
    return this.nodes[entry];
  }
}

function grown(of: Int32Array, length: number, fill: number): Int32Array<ArrayBuffer> {
  const out = new Int32Array(length).fill(fill);
  out.set(of);
  return out;
}
