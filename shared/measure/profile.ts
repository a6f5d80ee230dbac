/** What is booked on a profile at one moment. */
export interface SavedProfile {
  readonly at: Float64Array;
  readonly used: Float64Array;
}

/**
 * How much of something is in use over time, as a step function: `used[i]` from `at[i]` until `at[i + 1]`.
 * Times are minutes; before the first breakpoint nothing changes any more. Events, not minutes, so that a whole week costs nothing.
 */
export class Profile {
  private at = new Float64Array(32);
  private used = new Float64Array(32);
  private size = 1;

  /** Most that may be in use at once. */
  readonly capacity: number;

  constructor(capacity: number) {
    this.capacity = capacity;
    this.at[0] = Number.NEGATIVE_INFINITY;
  }

  private indexAt(time: number): number {
    const { at } = this;
    let [low, high] = [0, this.size - 1];
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if ((at[middle] ?? 0) <= time) low = middle;
      else high = middle - 1;
    }
    return low;
  }

  private breakAt(time: number): number {
    const i = this.indexAt(time);
    if (this.at[i] === time) return i;
    if (this.size === this.at.length) this.grow();
    this.at.copyWithin(i + 2, i + 1, this.size);
    this.used.copyWithin(i + 2, i + 1, this.size);
    this.at[i + 1] = time;
    this.used[i + 1] = this.used[i] ?? 0;
    this.size += 1;
    return i + 1;
  }

  private grow(): void {
    const [at, used] = [new Float64Array(2 * this.at.length), new Float64Array(2 * this.at.length)];
    at.set(this.at);
    used.set(this.used);
    [this.at, this.used] = [at, used];
  }

  /** What is booked now, to come back to. */
  saved(): SavedProfile {
    return { at: this.at.slice(0, this.size), used: this.used.slice(0, this.size) };
  }

  /** Comes back to what was booked when it was saved. */
  restore({ at, used }: SavedProfile): void {
    while (this.at.length < at.length) this.grow();
    this.at.set(at);
    this.used.set(used);
    this.size = at.length;
  }

  /** Books `amount` from `start` until `end`; a negative amount gives it back. */
  add(start: number, end: number, amount: number): void {
    if (end <= start) return;
    const first = this.breakAt(start);
    const last = this.breakAt(end);
    for (let i = first; i < last; i += 1) this.used[i] = (this.used[i] ?? 0) + amount;
  }

  /** First stretch between `start` and `end` where `amount` more does not fit; null when it fits throughout. */
  conflict(start: number, end: number, amount: number): { readonly from: number; readonly to: number } | null {
    if (end <= start) return null;
    for (let i = this.indexAt(start); i < this.size && (this.at[i] ?? 0) < end; i += 1) {
      if ((this.used[i] ?? 0) + amount > this.capacity + 1e-9) return { from: this.at[i] ?? 0, to: this.stretchTo(i) };
    }
    return null;
  }

  /** The same without garbage: index of the first stretch where it does not fit, -1 when it fits throughout; `stretchFrom` and `stretchTo` tell its ends. */
  clashIndex(start: number, end: number, amount: number): number {
    if (end <= start) return -1;
    const { at, used, size } = this;
    const room = this.capacity + 1e-9 - amount;
    for (let i = this.indexAt(start); i < size && (at[i] ?? 0) < end; i += 1) if ((used[i] ?? 0) > room) return i;
    return -1;
  }

  /** Start of a stretch by its index. */
  stretchFrom(i: number): number {
    return this.at[i] ?? 0;
  }

  /** End of a stretch by its index. */
  stretchTo(i: number): number {
    return i + 1 < this.size ? (this.at[i + 1] ?? 0) : Number.POSITIVE_INFINITY;
  }

  /** The time since which `amount` more fits throughout until `until`; `until` itself when it does not fit just before, minus infinity when it always has. */
  freeSince(until: number, amount: number): number {
    let i = this.indexAt(until);
    if (this.at[i] === until) i -= 1;
    let since = until;
    for (; i >= 0 && (this.used[i] ?? 0) + amount <= this.capacity + 1e-9; i -= 1) since = this.at[i] ?? since;
    return since;
  }
}
