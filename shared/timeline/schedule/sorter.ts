/** Sorts activities by a whole number each, stable, in time linear in both: no comparison, no garbage. */
export class Sorter {
  private readonly count: Int32Array;

  /** @param keys keys lie from 0 to `keys` - 1. */
  constructor(keys: number) {
    this.count = new Int32Array(keys + 1);
  }

  /** Fills `list` with the activities of `base` by rising key; equal keys keep the order of `base`. @param most highest key there is. */
  sort(base: Int32Array, key: Int32Array, most: number, list: Int32Array): void {
    const { count } = this;
    count.fill(0, 0, most + 2);
    for (let p = 0; p < base.length; p += 1) {
      const k = (key[base[p] ?? 0] ?? 0) + 1;
      count[k] = (count[k] ?? 0) + 1;
    }
    for (let k = 1; k <= most; k += 1) count[k] = (count[k] ?? 0) + (count[k - 1] ?? 0);
    for (let p = 0; p < base.length; p += 1) {
      const i = base[p] ?? 0;
      const k = key[i] ?? 0;
      const place = count[k] ?? 0;
      count[k] = place + 1;
      list[place] = i;
    }
  }
}
