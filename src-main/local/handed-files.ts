/** How long a window waits for a file before it asks again, in milliseconds. */
const waitMs = 25_000;
/** A window that asked so short a time ago is about to ask again. */
const graceMs = 5000;

/** Event files that later starts hand over to the running program. */
export class HandedFiles {
  /** The file the next window opens with. */
  first: string | null;
  private readonly wait: number;
  private readonly waiting: ((path: string | null) => void)[] = [];
  private readonly queue: string[] = [];
  private lastAsked = -Infinity;

  constructor(first: string | null, wait: number = waitMs) {
    this.first = first;
    this.wait = wait;
  }

  /** How many windows wait for a file. */
  get windows(): number {
    return this.waiting.length;
  }

  /** Takes a file over. Answers whether a window is there to show it. */
  give(path: string | null): boolean {
    const there = this.waiting.length > 0 || performance.now() - this.lastAsked < graceMs;
    if (path === null) return there;
    this.first = path;
    const window = this.waiting.shift();
    if (window !== undefined) window(path);
    else if (there) this.queue.push(path);
    return there;
  }

  /** The next file handed over; null when there was none for a while. `gone`: the window that waits is not there any more, so no file may go to it. */
  next(gone?: AbortSignal): Promise<string | null> {
    if (gone?.aborted === true) return Promise.resolve(null);
    const queued = this.queue.shift();
    this.lastAsked = performance.now();
    if (queued !== undefined) return Promise.resolve(queued);
    return new Promise((resolve) => {
      const done = (path: string | null): void => {
        clearTimeout(timer);
        const place = this.waiting.indexOf(done);
        if (place >= 0) this.waiting.splice(place, 1);
        this.lastAsked = performance.now();
        resolve(path);
      };
      const timer = setTimeout(() => done(null), this.wait);
      // A window that waits does not keep the program alive.
      timer.unref();
      this.waiting.push(done);
      gone?.addEventListener('abort', () => done(null), { once: true });
    });
  }
}
