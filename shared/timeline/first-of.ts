/** Whole numbers from 0 on; gives back the smallest first (a binary heap). */
export class FirstOf {
  private readonly heap: Int32Array;
  private size = 0;

  /** @param most how many there are at once. */
  constructor(most: number) {
    this.heap = new Int32Array(most + 1);
  }

  /** Puts a number in. */
  add(value: number): void {
    const { heap } = this;
    let at = this.size;
    this.size += 1;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if ((heap[above] ?? 0) <= value) break;
      heap[at] = heap[above] ?? 0;
      at = above;
    }
    heap[at] = value;
  }

  /** Takes the smallest out; -1 when there is none. */
  take(): number {
    const { heap } = this;
    if (this.size === 0) return -1;
    const first = heap[0] ?? 0;
    this.size -= 1;
    const value = heap[this.size] ?? 0;
    let at = 0;
    for (let next = 1; next < this.size; next = 2 * at + 1) {
      if (next + 1 < this.size && (heap[next + 1] ?? 0) < (heap[next] ?? 0)) next += 1;
      if ((heap[next] ?? 0) >= value) break;
      heap[at] = heap[next] ?? 0;
      at = next;
    }
    heap[at] = value;
    return first;
  }
}
