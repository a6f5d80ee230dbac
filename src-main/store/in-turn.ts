/** Runs the jobs of one key one after the other, so that two saves of a file never interleave. */
export class InTurn {
  private readonly last = new Map<string, Promise<unknown>>();

  run<T>(key: string, job: () => Promise<T>): Promise<T> {
    const before = this.last.get(key) ?? Promise.resolve();
    const mine = before.then(job, job);
    const settled = mine.then(() => {}, () => {});
    this.last.set(key, settled);
    void settled.then(() => {
      if (this.last.get(key) === settled) this.last.delete(key);
    });
    return mine;
  }
}
